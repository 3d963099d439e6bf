#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/fill_factor.h"
#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// USDA SR28 02047 table salt: 6 g a teaspoon, 292 g a cup, 0.4 g a dash.
TableFood salt() {
    TableFood food = kitchen::row("02047", "table salt");
    kitchen::set(food, Component::ENERC_KCAL, 0);
    food.measures = {
        {1, "tsp", "", 6, 0, {}}, {1, "cup", "", 292, 0, {}}, {1, "dash", "", 0.4, 0, {}}};
    return food;
}

/// USDA SR28 01145 butter, unsalted: 14.2 g a tablespoon, 227 g a cup.
TableFood butter() {
    TableFood food = kitchen::row("01145", "butter, unsalted");
    kitchen::set(food, Component::ENERC_KCAL, 717);
    food.measures = {{1, "tbsp", "", 14.2, 0, {}}, {1, "cup", "", 227, 0, {}}};
    return food;
}

OpenWay wayOf(Kitchen kitchen, const std::string& line) {
    return Served{kitchen.line(line)}.way(0);
}

}  // namespace

TEST_CASE("a heaping spoon holds a quarter to twice as much again", "[nutrition]") {
    const OpenWay level = wayOf(Kitchen{}, R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})");
    const OpenWay heaping =
        wayOf(Kitchen{}, R"({"id":"o","amount":"2","unit":"tbsp","fill":"heaping","food":"oil"})");
    CHECK(heaping.way == Way::Table);
    CHECK(heaping.grams.value() == Approx(1.625 * 27));
    // The filling is a rectangle of 0.75 level spoons, beside the measure's assumed 7 %.
    CHECK(heaping.grams.uncertainty() ==
          Approx(std::hypot(0.75 / std::sqrt(12.0) * 27, 0.07 * 27 * 1.625)));
    CHECK(heaping.spreadAssumed);
    CHECK(*heaping.why.fill == Interval{1.25, 2.0});
    CHECK(level.grams.value() == 27);
}

TEST_CASE("level is exactly one, the other fillings hold what common practice says",
          "[nutrition]") {
    const auto grams = [](const char* fill) {
        return wayOf(Kitchen{},
                     std::string{R"({"id":"o","amount":"1","unit":"cup","food":"oil","fill":")"} +
                         fill + "\"}");
    };
    CHECK(grams("level").grams.value() == 216);
    CHECK(grams("level").grams.uncertainty() == Approx(0.07 * 216));
    CHECK_FALSE(grams("level").why.fill);
    CHECK(grams("scant").grams.value() == Approx(0.925 * 216));
    CHECK(grams("generous").grams.value() == Approx(1.075 * 216));
    CHECK(grams("rounded").grams.value() == Approx(1.35 * 216));
}

TEST_CASE("a weighing is as it is, however the spoon was filled", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "41");
    const OpenWay way = wayOf(kitchen, R"({"id":"o","amount":"3","unit":"tbsp","fill":"heaping",
                                           "food":"oil","weighed":["r"]})");
    CHECK(way.grams.value() == 41);
    CHECK_FALSE(way.why.fill);
}

TEST_CASE("millilitres cannot be heaped", "[nutrition]") {
    const OpenWay way =
        wayOf(Kitchen{}, R"({"id":"o","amount":"100","unit":"ml","fill":"heaping","food":"oil"})");
    CHECK(way.grams.value() == Approx(216 / 236.5882365 * 100));
}

TEST_CASE("a pinch is a vague volume by the density of its food", "[nutrition]") {
    // Common practice: 1/16 of a teaspoon of 5 mL, give or take half of it.
    const OpenWay way = wayOf(Kitchen{}.row("salt", salt()),
                              R"({"id":"s","amount":"2","unit":"pinch","food":"salt"})");
    CHECK(way.way == Way::Assumed);
    CHECK(way.why.basis == WayBasis::MannerOfSpeech);
    const double middle = 2 * 0.3125 * 292 / 236.5882365;
    CHECK(way.grams.value() == Approx(middle));
    CHECK(way.grams.uncertainty() == Approx(middle * std::hypot(1 / std::sqrt(12.0), 0.07)));
}

TEST_CASE("a dash that the table weighs is the table's", "[nutrition]") {
    const OpenWay way = wayOf(Kitchen{}.row("salt", salt()),
                              R"({"id":"s","amount":"3","unit":"dash","food":"salt"})");
    CHECK(way.way == Way::Table);
    CHECK(way.grams.value() == Approx(1.2));
}

TEST_CASE("butter the size of a walnut weighs by the walnut's volume", "[nutrition]") {
    // Common practice: 15 to 30 mL.
    const OpenWay way = wayOf(
        Kitchen{}.row("butter", butter()),
        R"({"id":"b","amount":"1","piece":"piece","size":"the size of a walnut","food":"butter"})");
    CHECK(way.way == Way::Assumed);
    CHECK(way.why.basis == WayBasis::MannerOfSpeech);
    CHECK(way.grams.value() == Approx(22.5 * 227 / 236.5882365));
}

TEST_CASE("a pinch of what has no volume measure is refused, not taken for water", "[nutrition]") {
    TableFood still = salt();
    still.measures = {{1, "packet", "", 2, 0, {}}};
    const auto dossier = Kitchen{}
                             .row("salt", still)
                             .line(R"({"id":"s","amount":"1","unit":"pinch","food":"salt"})")
                             .dossier();
    REQUIRE(dossier);
    CHECK(cook(*dossier).error().code == ErrorCode::NoWayToGrams);
}

TEST_CASE("the fillings are named once, each with both ends", "[nutrition]") {
    CHECK(fillFactor(Fill::Heaping) == Interval{1.25, 2.0});
    CHECK(fillFactor(Fill::Rounded) == Interval{1.1, 1.6});
    CHECK(fillFactor(Fill::Generous) == Interval{1.0, 1.15});
    CHECK(fillFactor(Fill::Level) == Interval{1, 1});
    CHECK(fillFactor(Fill::Scant) == Interval{0.85, 1.0});
}
