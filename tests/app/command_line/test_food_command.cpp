#include <catch2/catch.hpp>

#include "command_line/scratch_kitchen.h"
#include "core/support/json.h"

namespace nettare {

namespace {

std::string shown(const std::vector<std::string>& arguments) {
    const Outcome outcome = run(arguments);
    INFO(outcome.err);
    CHECK(outcome.code == 0);
    return outcome.out;
}

bool mentions(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a slip in a word of foods is told before what it found", "[commandline]") {
    const std::string found = shown({"foods", "courgete"});
    CHECK(found.starts_with("“courgete” was taken as courgette.\nusda-sr 28 11477 "));
    CHECK_FALSE(mentions(shown({"foods", "courgette"}), "taken as"));
    CHECK(shown({"foods", "xylophone"}) == "No food of the table matches “xylophone”.\n");
}

TEST_CASE("a food is shown with all that its table says", "[commandline]") {
    const std::string onion = shown({"food", "11282"});
    CHECK(onion.starts_with("onion, raw\nfrom     usda-sr 28 11282, "));
    // USDA SR28, 11282: refuse 10 %, 1 cup chopped = 160 g, energy 40 kcal, factors 6.25, 2.78,
    // 8.37 and 3.84; it has no value of added sugars.
    CHECK(mentions(onion, "refuse   10 %"));
    CHECK(mentions(onion,
                   "nitrogen to protein 6.25; kcal per g of protein 2.78, fat 8.37, "
                   "carbohydrate 3.84\n"));
    CHECK(mentions(onion, "  1 cup, chopped = 160 g"));
    CHECK(mentions(onion, "ENERC_KCAL "));
    CHECK(mentions(onion, "assumed"));
    CHECK(mentions(onion, "No data: "));
    CHECK(shown({"food", "usda-sr", "28", "11282"}) == onion);
    CHECK(shown({"food", "usda-sr 28 11282"}) == onion);
}

TEST_CASE("a food for other programs keeps its numbers unrounded", "[commandline]") {
    const auto json = parseJson(shown({"food", "11282", "--json"}));
    REQUIRE(json);
    CHECK(*json->find("name")->text() == "onion, raw");
    CHECK(*json->find("row")->find("number")->text() == "11282");
    CHECK(*json->find("refuse_percent")->number() == 10);
    bool energy = false;
    for (const Json& value : *json->find("values")->items()) {
        if (*value.find("tagname")->text() != "ENERC_KCAL") continue;
        energy = true;
        CHECK(*value.find("per_100g")->number() == 40);
        CHECK(*value.find("unit")->text() == "kcal");
    }
    CHECK(energy);
    CHECK_FALSE(json->find("no_data")->items()->empty());
}

TEST_CASE("a number that no table has is refused with a sentence", "[commandline]") {
    const Outcome outcome = run({"food", "99999"});
    CHECK(outcome.code == 1);
    CHECK(outcome.out.empty());
    CHECK(outcome.err ==
          "nettare: NUMBER: no table at hand has the food 99999 (table, release, number); correct "
          "them.\n");
    CHECK(run({"food", "usda-sr", "27", "11282"}).code == 1);
    CHECK(run({"food", " "}).err == "nettare: NUMBER: the text is empty; write what is meant.\n");
}

}  // namespace nettare
