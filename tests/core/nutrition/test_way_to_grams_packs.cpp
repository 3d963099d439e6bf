#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// USDA SR28 12118 coconut milk, canned: 226 g a cup.
TableFood coconutMilk() {
    TableFood food = kitchen::row("12118", "coconut milk, canned");
    kitchen::set(food, Component::ENERC_KCAL, 197);
    food.measures = {{1, "cup", "", 226, 0, {}}, {1, "tbsp", "", 15, 0, {}}};
    return food;
}

const LineGrams& only(const Served& served) {
    return served.cooked.lines[0].ways;
}

}  // namespace

TEST_CASE("two tins of 400 g are 800 g, as finely as the tin is printed", "[nutrition]") {
    const Served served{Kitchen{}.line(
        R"({"id":"f","amount":"2","piece":"tin","each":{"amount":"400","unit":"g"},"food":"fennel"})")};
    REQUIRE(served.way(0).way == Way::Label);
    CHECK(served.way(0).why.basis == WayBasis::PackContent);
    CHECK(served.way(0).grams.value() == 800);
    // "400" stands for 399.5 to 400.5 g, twice the same print.
    CHECK(served.way(0).grams.uncertainty() == Approx(2 / std::sqrt(12.0)));
}

TEST_CASE("a tin of 14.5 oz is 411 g", "[nutrition]") {
    // NIST Handbook 44, appendix C: 1 oz = 28.349523125 g.
    const Served served{Kitchen{}.line(
        R"({"id":"f","amount":"1","piece":"can","each":{"amount":"14.5","unit":"oz"},"food":"fennel"})")};
    CHECK(served.way(0).grams.value() == Approx(411.0680853).epsilon(1e-9));
    CHECK(served.way(0).grams.uncertainty() == Approx(2.8349523125 / std::sqrt(12.0)));
}

TEST_CASE("what a pack holds may lie off its declaration by the spread assumed", "[nutrition]") {
    Kitchen kitchen;
    kitchen.json("assumptions", R"({"declaration_spread":"0.05"})");
    kitchen.line(
        R"({"id":"f","amount":"3","piece":"can","each":{"amount":"400","unit":"g"},"food":"fennel"})");
    const double rounding = 3 / std::sqrt(12.0);
    CHECK(Served{kitchen}.way(0).grams.uncertainty() ==
          Approx(std::hypot(rounding, 3 * 40 / std::sqrt(12.0))));
}

TEST_CASE("a pack declared by volume weighs by the density of its food", "[nutrition]") {
    const Served served{Kitchen{}
                            .row("milk", coconutMilk())
                            .line(R"({"id":"m","amount":"2","piece":"can","food":"milk",
                                      "each":{"amount":"400","unit":"ml"}})")};
    CHECK(served.way(0).way == Way::Label);
    CHECK(served.way(0).grams.value() == Approx(800 * 226 / 236.5882365));
    CHECK(*served.way(0).why.gramsPerMl == Approx(226 / 236.5882365));
    CHECK(served.way(0).spreadAssumed);
}

TEST_CASE("a pack declared by volume has no weight where its food has no density", "[nutrition]") {
    TableFood still = coconutMilk();
    still.measures = {{1, "piece", "", 30, 0, {}}};
    Kitchen kitchen = Kitchen{}.row("milk", still);
    kitchen.line(
        R"({"id":"m","amount":"1","piece":"can","food":"milk","each":{"amount":"400","unit":"ml"}})");
    const auto dossier = kitchen.dossier();
    REQUIRE(dossier);
    CHECK(cook(*dossier).error().code == ErrorCode::NoWayToGrams);
}

TEST_CASE("servings of a label come before the content of packs", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.append("foods", R"({"id":"bar","name":"bar","label":{"rules":"us",
        "serving_grams":"25","serving":{"amount":"1","unit":"bar"},
        "declares":[{"component":"ENERC_KCAL","printed":"130"}]}})");
    kitchen.line(
        R"({"id":"b","amount":"4","piece":"bars","food":"bar","each":{"amount":"26","unit":"g"}})");
    const Served served{kitchen};
    REQUIRE(only(served).ways.size() == 2);
    CHECK(only(served).ways[0].why.basis == WayBasis::LabelServings);
    CHECK(only(served).ways[0].grams.value() == 100);
    CHECK(only(served).ways[1].why.basis == WayBasis::PackContent);
    CHECK(only(served).ways[1].way == Way::Label);
    CHECK(only(served).ways[1].grams.value() == 104);
}

TEST_CASE("a weight said beside the amount stands behind every better way", "[nutrition]") {
    const Served served{Kitchen{}.line(
        R"({"id":"f","amount":"1","unit":"cup","size":"sliced","equals":{"amount":"90","unit":"g"},"food":"fennel"})")};
    REQUIRE(only(served).ways.size() == 2);
    CHECK(only(served).way().way == Way::Table);
    CHECK(only(served).ways[1].way == Way::Assumed);
    CHECK(only(served).ways[1].why.basis == WayBasis::SaidAgain);
    CHECK(only(served).ways[1].grams.value() == 90);
    CHECK(only(served).ways[1].grams.uncertainty() == Approx(1 / std::sqrt(12.0)));
    CHECK_FALSE(only(served).ways[1].spreadAssumed);
}

TEST_CASE("a weight said beside what no table measures is the only way", "[nutrition]") {
    Kitchen kitchen;
    kitchen.line(
        R"({"id":"f","amount":"2","piece":"handful","equals":{"amount":"60","unit":"g"},"food":"fennel"})");
    CHECK(Served{kitchen}.way(0).grams.value() == 60);
    kitchen.json("lines", R"([{"id":"f","amount":"2","piece":"handful","food":"fennel",
        "equals":{"amount":"60","unit":"g"},
        "assumed":{"grams":"50","within":"10","reason":"my hand"}}])");
    const Served assumed{kitchen};
    REQUIRE(only(assumed).ways.size() == 1);
    CHECK(assumed.way(0).grams.value() == 50);
    CHECK(assumed.way(0).why.basis == WayBasis::CooksGrams);
}

TEST_CASE("a line to taste opens what is weighed or assumed and nothing else", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "3", "", "edible portion", "fine");
    kitchen.line(R"({"id":"s","to_taste":true,"food":"sugar","weighed":["r"]})");
    const Served served{kitchen};
    REQUIRE(only(served).ways.size() == 1);
    CHECK(served.way(0).way == Way::Weighed);
    CHECK(served.way(0).grams.value() == Approx(3));
}
