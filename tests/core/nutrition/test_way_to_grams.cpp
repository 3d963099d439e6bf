#include "core/nutrition/way_to_grams.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// An oil label of 1 tbsp = 14 g = 120 kcal, 14 g fat; with the table row beside it.
constexpr const char* kOilWithLabel =
    R"({"id":"bottle","name":"bottle","table":{"table":"usda-sr","release":"28","number":"04053"},
        "label":{"rules":"us","serving_grams":"14","serving":{"amount":"1","unit":"tbsp"},
        "declares":[{"component":"ENERC_KCAL","printed":"120"},{"component":"FAT","printed":"14"}]}})";

Kitchen bottle() {
    return Kitchen{}.append("foods", kOilWithLabel);
}

std::vector<Way> kinds(const LineGrams& grams) {
    std::vector<Way> found;
    for (const OpenWay& way : grams.ways) found.push_back(way.way);
    return found;
}

}  // namespace

TEST_CASE("six fennel bulbs of 218 g hold 405.48 kcal and not what the table's bulb says",
          "[nutrition]") {
    // USDA SR28 11957: 234 g a bulb, 31 kcal per 100 g. 6 x 218 g x 0.31 = 405.48; by the table
    // 435.24.
    Kitchen weighed = Kitchen{}.reading("bulb", "218");
    weighed.append("series", R"({"id":"bulb","name":"bulbs","kind":"per piece","of":"bulb",
                                 "readings":["bulb"]})");
    weighed.line(R"({"id":"f","amount":"6","piece":"bulb","food":"fennel",
                     "series":{"id":"bulb","use":"others"}})");
    const Served served{weighed};
    CHECK(served.figure(Basis::Batch, Component::ENERC_KCAL).value ==
          Approx(405.48).epsilon(1e-12));
    REQUIRE(kinds(served.cooked.lines[0].ways) == std::vector{Way::Series, Way::Table});
    const OpenWay& table = served.cooked.lines[0].ways.ways[1];
    CHECK(table.grams.value() * 0.31 == Approx(435.24).epsilon(1e-12));
    CHECK(disagreement(served.way(0), table).relative == Approx(234.0 / 218 - 1));
    CHECK(served.way(0).spreadAssumed);
}

TEST_CASE("three spoons of oil are 42 g by the label and 40.5 g by the table, both shown",
          "[nutrition]") {
    // USDA SR28 04053: 1 tbsp = 13.5 g.
    const Served served{bottle().line(R"({"id":"o","amount":"3","unit":"tbsp","food":"bottle"})")};
    const LineGrams& grams = served.cooked.lines[0].ways;
    REQUIRE(kinds(grams) == std::vector{Way::Label, Way::Table});
    CHECK(grams.ways[0].grams.value() == 42);
    CHECK(grams.ways[1].grams.value() == 40.5);
    CHECK(disagreement(grams.ways[0], grams.ways[1]).relative == Approx(-1.5 / 42));
    CHECK_FALSE(disagreement(grams.ways[0], grams.ways[1]).beyondUncertainty);
}

TEST_CASE("the label weighs a spoon whichever way its package spells it", "[nutrition]") {
    for (const char* unit : {"Tbsp", "tbsp.", "tablespoon", "Tablespoon(s)", "tbsp (14 g)"}) {
        INFO(unit);
        const std::string food =
            R"({"id":"bottle","name":"bottle","label":{"rules":"us","serving_grams":"14",
                "serving":{"amount":"1","unit":")" +
            std::string{unit} + R"("},"declares":[{"component":"ENERC_KCAL","printed":"120"}]}})";
        Kitchen kitchen = Kitchen{}.append("foods", food);
        kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"bottle"})");
        const Served served{kitchen};
        CHECK(served.way(0).way == Way::Label);
        CHECK(served.way(0).grams.value() == 42);
    }
}

TEST_CASE("the label weighs its pieces, whatever stands in brackets behind them", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.append("foods", R"json({"id":"c","name":"crackers",
        "label":{"rules":"us","serving_grams":"30",
        "serving":{"amount":"5","unit":"Crackers (30 g)"},
        "declares":[{"component":"ENERC_KCAL","printed":"130"}]}})json");
    kitchen.line(R"({"id":"o","amount":"10","piece":"cracker","food":"c"})");
    CHECK(Served{kitchen}.way(0).grams.value() == Approx(60));
}

TEST_CASE("used by its own measure a label's serving grams cancel", "[nutrition]") {
    const Served served{bottle().line(R"({"id":"o","amount":"3","unit":"tbsp","food":"bottle"})")};
    const Figure energy = served.figure(Basis::Batch, Component::ENERC_KCAL);
    CHECK(energy.value == 360);
    // 120 kcal stands for 115 to 125: u = 10/sqrt(12) a serving, and nothing else.
    CHECK(energy.u == Approx(3 * 10 / std::sqrt(12.0)));
    const Served byWeight{bottle().line(R"({"id":"o","amount":"42","unit":"g","food":"bottle"})")};
    CHECK(byWeight.figure(Basis::Batch, Component::ENERC_KCAL).value == Approx(360));
    CHECK(byWeight.figure(Basis::Batch, Component::ENERC_KCAL).u > energy.u);
}

TEST_CASE("no part of a food weighs more than the food", "[nutrition]") {
    // Fat 14 g of a 14 g serving stands for 13.5 to 14 g, not to 14.5 g.
    const Served served{bottle().line(R"({"id":"o","amount":"1","unit":"tbsp","food":"bottle"})")};
    const double off = 0.25;
    CHECK(served.figure(Basis::Batch, Component::FAT).u ==
          Approx(std::sqrt(0.5 * 0.5 / 12 + off * off)));
}

TEST_CASE("two teaspoons of butter are 10 g by its label", "[nutrition]") {
    // Common practice, no source: a butter label of 1 tbsp = 14 g gives 9.3 g, one of 2 tsp = 10 g
    // 10 g.
    Kitchen butter = Kitchen{}.append(
        "foods", R"({"id":"butter","name":"butter","label":{"rules":"us","serving_grams":"10",
        "serving":{"amount":"2","unit":"tsp"},"declares":[{"component":"FAT","printed":"8"}]}})");
    const Served served{butter.line(R"({"id":"b","amount":"2","unit":"tsp","food":"butter"})")};
    CHECK(served.way(0).way == Way::Label);
    CHECK(served.way(0).grams.value() == Approx(10).epsilon(1e-12));
}

TEST_CASE("an ear's kernels by weighing stand beside the table's", "[nutrition]") {
    // Common practice, no source: a trimmed ear of sweet corn of about 7.5 x 2 in gives 152 g of
    // kernels; a table says 154 g. The two agree within the rounding and spread of any scale.
    OpenWay weighed;
    weighed.grams = LinearForm{152};
    weighed.grams.depend(ownSource({SourceKind::Rounding, 0, 0}, rectangular(1)), 1);
    OpenWay table;
    table.grams = LinearForm{154};
    table.grams.depend(ownSource({SourceKind::MeasureAssumed, 0, 0}, 0.14 * 154), 1);
    CHECK(disagreement(weighed, table).relative == Approx(2.0 / 152));
    CHECK_FALSE(disagreement(weighed, table).beyondUncertainty);
}

TEST_CASE("a spoon without a measure of its own goes by density of the same food", "[nutrition]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"o","amount":"100","unit":"ml","food":"oil"})");
    kitchen.line(R"({"id":"f","amount":"1","unit":"tbsp","food":"fennel","size":"sliced"})");
    const Served served{kitchen};
    CHECK(served.way(0).way == Way::Density);
    CHECK(served.way(0).grams.value() == Approx(216 / 236.5882365 * 100));
    CHECK(served.way(1).grams.value() == Approx(87.0 / 16));
}

TEST_CASE("a metric cup is not the table's cup", "[nutrition]") {
    const Served served{Kitchen{}
                            .json("measures", "\"metric\"")
                            .line(R"({"id":"o","amount":"1","unit":"cup","food":"oil"})")};
    CHECK(served.way(0).way == Way::Density);
    CHECK(served.way(0).grams.value() == Approx(216 * 250 / 236.5882365));
}

TEST_CASE("a published spread acts like a series of single measures", "[nutrition]") {
    const Served served{Kitchen{}.line(R"({"id":"s","amount":"3","unit":"tsp","food":"sugar"})")};
    CHECK(served.way(0).grams.value() == Approx(12.6));
    CHECK(served.way(0).grams.uncertainty() == Approx(std::sqrt(9 * 0.09 / 10 + 3 * 0.09)));
    CHECK_FALSE(served.way(0).spreadAssumed);
}

TEST_CASE("weighed as purchased is trimmed by the cook's ratio, else by the table's refuse",
          "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("bought", "1000", "", "as purchased");
    kitchen.line(R"({"id":"f","amount":"4","piece":"bulb","food":"fennel","weighed":["bought"]})");
    CHECK(Served{kitchen}.way(0).grams.value() == Approx(720));  // SR28: refuse 28 %
    kitchen.reading("whole", "200").reading("core", "150");
    kitchen.append("series", R"({"id":"trim","name":"trim","kind":"ratio",
                                 "pairs":[{"before":"whole","after":"core"}]})");
    kitchen.json("lines", R"([{"id":"f","amount":"4","piece":"bulb","food":"fennel",
                               "weighed":["bought"],"trim":"trim"}])");
    CHECK(Served{kitchen}.way(0).grams.value() == Approx(750));
    CHECK(Served{kitchen}.way(0).trimmed);
}

TEST_CASE("a metric cup is not a label's cup", "[nutrition]") {
    // 21 CFR 101.9(b)(5)(viii): a cup is 240 mL, a tablespoon 15 mL.
    const auto grams = [](const char* measures) {
        Kitchen kitchen = bottle().json("measures", measures);
        kitchen.line(R"({"id":"o","amount":"1","unit":"cup","food":"bottle","way":"label"})");
        return Served{kitchen}.way(0).grams.value();
    };
    CHECK(grams("\"us\"") == Approx(14.0 * 16));
    CHECK(grams("\"label\"") == Approx(14.0 * 16));
    CHECK(grams("\"metric\"") == Approx(14.0 * 250 / 15));
}

TEST_CASE("a weight as written is as fine as its last step", "[nutrition]") {
    const auto step = [](const char* amount, const char* unit) {
        Kitchen kitchen;
        kitchen.line(std::string{R"({"id":"f","food":"fennel","amount":")"} + amount +
                     R"(","unit":")" + unit + "\"}");
        return Served{kitchen}.way(0).grams.uncertainty() * std::sqrt(12.0);
    };
    CHECK(step("200", "g") == Approx(1));
    CHECK(step("1.50", "kg") == Approx(10));
    CHECK(step("1,5", "kg") == Approx(100));
    CHECK(step("1/2", "kg") == Approx(500));
    CHECK(step("1 1/4", "kg") == Approx(250));
    CHECK(step("1.5-1.6", "kg") == Approx(std::hypot(100, 100)));
}

TEST_CASE("two bags bought for one line are one lot to trim", "[nutrition]") {
    const auto grams = [](const char* weighed) {
        Kitchen kitchen = Kitchen{}.reading("bags", "2000", "", "as purchased");
        kitchen.reading("a", "1000", "", "as purchased").reading("b", "1000", "", "as purchased");
        kitchen.reading("whole", "200").reading("core", "100");
        kitchen.append("series", R"({"id":"trim","name":"trim","kind":"ratio",
                                     "pairs":[{"before":"whole","after":"core"}]})");
        kitchen.line(std::string{R"({"id":"f","amount":"8","piece":"bulb","food":"fennel",
                                     "trim":"trim","weighed":)"} +
                     weighed + "}");
        return Served{kitchen}.way(0).grams;
    };
    CHECK(grams(R"(["a","b"])").value() == Approx(1000));
    // 14 % of the lost 100 g: 14 g a lot of 200 g, for the ratio 10 times, for 2 kg sqrt(10) times.
    CHECK(grams(R"(["a","b"])").uncertainty() == Approx(14 * std::sqrt(110.0)).epsilon(1e-3));
    CHECK(grams(R"(["a","b"])").uncertainty() ==
          Approx(grams(R"(["bags"])").uncertainty()).epsilon(1e-3));
}

TEST_CASE("a trim's spread can be pooled with an earlier or the assumed one", "[nutrition]") {
    const auto grams = [](const char* pooled) {
        Kitchen kitchen = Kitchen{}.reading("bags", "2000", "", "as purchased");
        kitchen.reading("w1", "200").reading("c1", "165").reading("w2", "200").reading("c2", "135");
        kitchen.append("series", std::string{R"({"id":"trim","name":"trim","kind":"ratio",
            "pairs":[{"before":"w1","after":"c1"},{"before":"w2","after":"c2"}])"} +
                                     pooled + "}");
        kitchen.line(R"({"id":"f","amount":"8","piece":"bulb","food":"fennel","trim":"trim",
                         "weighed":["bags"]})");
        return Served{kitchen}.way(0).grams;
    };
    // s_e for the ratio 2000/(200 sqrt 2) times, for the lot of 2 kg sqrt(10) times; of the share
    // sqrt(0.01125) of its own, 4 of 0.03 with it, 8 of 14 % of the lost quarter with it.
    const double times = 200 * std::sqrt(50.0 + 10);
    CHECK(grams("").value() == Approx(1500));
    CHECK(grams("").uncertainty() == Approx(std::sqrt(0.01125) * times).epsilon(1e-3));
    const LinearForm earlier = grams(R"(,"pooled_with":{"name":"2025","s":"0.03","nu":"4"})");
    CHECK(earlier.value() == Approx(1500));
    CHECK(earlier.uncertainty() == Approx(std::sqrt(0.00297) * times).epsilon(1e-3));
    CHECK(grams(R"(,"pooled":true)").uncertainty() ==
          Approx(std::sqrt(0.02105 / 9) * times).epsilon(1e-3));
}

TEST_CASE("a whole lot that was weighed itself has the rounding of its readings", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("one", "100").reading("two", "104");
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["one","two"]})");
    kitchen.line(R"({"id":"f","amount":"2","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"among"}})");
    kitchen.line(R"({"id":"w","amount":"2","piece":"bulb","food":"fennel",
                     "weighed":["one","two"]})");
    const Served served{kitchen};
    CHECK(served.way(0).grams.value() == Approx(204));
    CHECK(served.way(0).grams.uncertainty() == Approx(served.way(1).grams.uncertainty()));
    CHECK(served.way(0).grams.uncertainty() > 0);
}

TEST_CASE("the bowl of a series and the scales of its readings are common sources", "[nutrition]") {
    Kitchen kitchen;
    for (const auto& [id, relative] : {std::pair{"c1", "0.01"}, {"c2", "0.03"}})
        kitchen.append("scales", std::string{R"({"id":")"} + id + R"(","name":")" + id +
                                     R"(","unit":"g","readability":"2","calibration":")" +
                                     relative + "\"}");
    kitchen.append("vessels", R"({"id":"bowl","name":"bowl","scale":"c1","tare":"50"})");
    const char* entries[][3] = {{"a", "c1", "150"}, {"b", "c1", "250"}, {"c", "c2", "150"}};
    for (const auto& [id, scale, shown] : entries) {
        kitchen.append("indications", std::string{R"({"id":")"} + id + R"(","scale":")" + scale +
                                          R"(","state":"edible portion","shown":")" + shown +
                                          "\"}");
        kitchen.append("readings", std::string{R"({"id":")"} + id + R"(","gross":")" + id +
                                       R"(","vessel":"bowl"})");
    }
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"bulb",
                                 "readings":["a","b","c"]})");
    kitchen.line(R"({"id":"f","amount":"6","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"others"}})");
    const auto shareOf = [&](SourceKind kind, std::uint32_t first) {
        const Served served{kitchen};
        for (const LinearForm::Term& term : served.way(0).grams.terms())
            if (term.source.key.kind == kind && term.source.key.first == first)
                return term.sensitivity * term.source.u;
        return 0.0;
    };
    // Six bulbs are twice what the three readings sum to; scales "scale" and "fine" come first.
    CHECK(shareOf(SourceKind::VesselTare, 0) == Approx(-6 * 2 / std::sqrt(12.0)));
    CHECK(shareOf(SourceKind::Calibration, 2) == Approx(2 * (150 + 250 - 3 * 50) * 0.01));
    CHECK(shareOf(SourceKind::Calibration, 3) == Approx(2 * 150 * 0.03));
}

TEST_CASE("a range of amounts is a rectangle", "[nutrition]") {
    const Served served{Kitchen{}.line(R"({"id":"o","amount":"2-3","unit":"tbsp","food":"oil"})")};
    CHECK(served.way(0).grams.value() == Approx(2.5 * 13.5));
    const double spread = 0.07 * 2.5 * 13.5;
    const double range = 13.5 / std::sqrt(12.0);
    CHECK(served.way(0).grams.uncertainty() == Approx(std::hypot(spread, range)));
}

TEST_CASE("what nothing weighs is refused, and so is a way that is not open", "[nutrition]") {
    const auto refusal = [](const std::string& line) {
        const auto dossier = Kitchen{}.line(line).dossier();
        REQUIRE(dossier);
        return cook(*dossier).error();
    };
    const Error none = refusal(R"({"id":"f","amount":"1","piece":"handful","food":"fennel"})");
    CHECK(none.code == ErrorCode::NoWayToGrams);
    CHECK(none.value("unit") == "handful");
    CHECK(none.pointer == "/lines/0");
    CHECK(refusal(R"({"id":"f","amount":"1","piece":"bulb","food":"fennel","way":"label"})").code ==
          ErrorCode::WayNotOpen);
}
