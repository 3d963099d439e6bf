#include <catch2/catch.hpp>
#include <clocale>

#include "command_line/scratch_kitchen.h"
#include "core/food/component.h"
#include "core/support/json.h"

using namespace nettare;

namespace {

const std::string kSkewers = NETTARE_RESOURCES "/demo/prawn-fennel-skewers.json";
const std::string kPatties = NETTARE_RESOURCES "/demo/barley-beetroot-patties.json";

std::string good(const std::vector<std::string>& arguments) {
    const Outcome outcome = run(arguments);
    CHECK(outcome.err.empty());
    CHECK(outcome.code == 0);
    return outcome.out;
}

Json goodJson(const std::vector<std::string>& arguments) {
    auto json = parseJson(good(arguments));
    REQUIRE(json);
    return std::move(*json);
}

/// The locale of numbers and texts, German while it lives.
class German {
public:
    German() : set_{std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr} {}
    ~German() { std::setlocale(LC_ALL, "C"); }
    German(const German&) = delete;
    German& operator=(const German&) = delete;
    [[nodiscard]] bool isSet() const { return set_; }

private:
    bool set_;
};

}  // namespace

TEST_CASE("the figures of a recipe say of what and per what they are", "[commandline]") {
    CHECK(good({"figures", kSkewers})
              .starts_with("Charred prawn & fennel skewers\n"
                           "per portion of 2 skewers, this batch; ± is 95 %\n"));
    CHECK(good({"figures", kPatties})
              .starts_with("Barley & beetroot patties\n"
                           "per portion of 3 patties, this batch; ± is 95 %\n"));
    const std::string both = good({"figures", kSkewers, kPatties});
    CHECK(both == good({"figures", kSkewers}) + good({"figures", kPatties}));
}

TEST_CASE("figures are given per piece, portion, 100 g or batch", "[commandline]") {
    const std::pair<std::string, std::string> bases[] = {
        {"piece", "per skewer"},
        {"portion", "per portion of 2 skewers"},
        {"100g", "per 100 g"},
        {"batch", "per batch of 10 skewers"},
    };
    for (const auto& [basis, words] : bases) {
        CHECK(good({"figures", "--per", basis, kSkewers}).find("\n" + words + ", this batch") !=
              std::string::npos);
        CHECK(*goodJson({"figures", "--json", "--per", basis, kSkewers}).find("basis")->text() ==
              basis);
    }
}

TEST_CASE("figures are of the recipe, of this batch or of any one piece", "[commandline]") {
    const std::pair<std::string, std::string> meanings[] = {
        {"mean", "recipe mean"}, {"batch", "this batch"}, {"piece", "any one piece"}};
    for (const auto& [of, words] : meanings) {
        CHECK(
            good({"figures", kSkewers, "--of", of}).find("\nper portion of 2 skewers, " + words) !=
            std::string::npos);
        CHECK(*goodJson({"figures", "--json", "--of", of, kSkewers}).find("of")->text() == words);
    }
    CHECK(good({"figures", kSkewers, "--of", "batch"}) == good({"figures", kSkewers}));
}

TEST_CASE("the path of a figure begins with the figure of the page", "[commandline]") {
    const std::string path = good({"path", kSkewers, "ENERC_KCAL", "--per", "piece"});
    CHECK(
        path.starts_with("Where 72 kcal comes from\nenergy per skewer of Charred prawn & fennel "
                         "skewers, this batch; ± is 95 %\n\n72 kcal ± "));
    CHECK(path.find("its share of the 12.5 g of mixture that stayed") != std::string::npos);
    CHECK(good({"path", kSkewers, "ENERC_KCAL"}).starts_with("Where 144 kcal comes from\n"));
    CHECK(good({"path", kSkewers, "NA", "--of", "mean"}).find(", recipe mean; ± is 95 %\n") !=
          std::string::npos);
    const Json json = goodJson({"path", kSkewers, "FAT", "--json", "--per", "batch"});
    CHECK(*json.find("kind")->text() == "figure");
    CHECK(json.find("below")->items()->size() == 1);
}

TEST_CASE("figures for other programs name each component with all its members", "[commandline]") {
    for (const std::string& document : {kSkewers, kPatties}) {
        const Json json = goodJson({"figures", "--json", document});
        const Json::Array& figures = *json.find("figures")->items();
        REQUIRE(figures.size() == 41);
        for (std::size_t i = 0; i < figures.size(); ++i) {
            CHECK(*figures[i].find("component")->text() == allComponents()[i].tagname);
            CHECK(*figures[i].find("unit")->text() == allComponents()[i].unit);
            CHECK(*figures[i].find("basis")->text() == "portion");
            for (const char* number : {"value", "u", "low", "at_least", "known_share"})
                CHECK(figures[i].find(number)->number() != nullptr);
            for (const char* orNull : {"nu", "high", "at_most"}) {
                const Json* value = figures[i].find(orNull);
                REQUIRE(value != nullptr);
                CHECK((value->isNull() || value->number() != nullptr));
            }
            CHECK(figures[i].find("missing_in")->items() != nullptr);
            for (const Json& source : *figures[i].find("sources")->items())
                for (const char* member : {"name", "sensitivity", "u", "nu"})
                    CHECK(source.find(member) != nullptr);
        }
    }
}

TEST_CASE("each line for other programs tells its way to grams and the others", "[commandline]") {
    const Json json = goodJson({"figures", "--json", kSkewers});
    const Json::Array& lines = *json.find("lines")->items();
    REQUIRE(lines.size() == 7);
    for (const Json& line : lines) {
        CHECK(line.find("way")->text() != nullptr);
        CHECK(*line.find("grams_eaten")->number() > 0);
        CHECK(line.find("alternatives")->items() != nullptr);
    }
}

TEST_CASE("a statement gives each number of pieces its own rounding", "[commandline]") {
    const std::string three = good({"statement", kSkewers});
    CHECK(three.starts_with("1 skewer has 72 kcal, 2 skewers have 144 kcal and 3 skewers have "));
    CHECK(three == good({"statement", kSkewers, "--pieces", "1,2,3"}));
    CHECK(good({"statement", kSkewers, "--pieces", "1/2"}).starts_with("1/2 skewer has "));
    CHECK(good({"statement", kPatties, "--component", "PROCNT"}).find(" g of protein") !=
          std::string::npos);
}

TEST_CASE("foods are found by a kitchen name", "[commandline]") {
    const std::string found = good({"foods", "prawn"});
    CHECK(found.find("usda-sr 28 15270") != std::string::npos);
    CHECK(found.find("shrimp, raw") != std::string::npos);
}

TEST_CASE("help and version are answers, not errors", "[commandline]") {
    CHECK(good({"--version"}).starts_with("nettare "));
    const std::string help = good({"--help"});
    for (const char* command : {"figures", "statement", "foods", "Exit codes"})
        CHECK(help.find(command) != std::string::npos);
    CHECK(good({"figures", "--help"}).find("--per") != std::string::npos);
}

TEST_CASE("a German locale changes no byte of the figures", "[commandline]") {
    const std::string text = good({"figures", kSkewers});
    const std::string json = good({"figures", "--json", kSkewers});
    const German german;
    INFO("the locale de_DE.UTF-8 is missing: install the package locales-all");
    REQUIRE(german.isSet());
    CHECK(std::string{std::localeconv()->decimal_point} == ",");
    CHECK(good({"figures", kSkewers}) == text);
    CHECK(good({"figures", "--json", kSkewers}) == json);
}
