#include <catch2/catch.hpp>

#include "core/quantity/unit.h"

using namespace nettare;

namespace {

Decimal factorOf(const char* symbol, MeasureSystem system = MeasureSystem::UsCustomary) {
    return findUnit(symbol, system)->factor;
}

Decimal exactly(const char* text) {
    return *Decimal::read(text);
}

}  // namespace

TEST_CASE("masses are the SI's and the avoirdupois pound's", "[quantity]") {
    CHECK(factorOf("g") == exactly("1"));
    // SI Brochure, 9th edition, table 7: kilo 10^3, milli 10^-3.
    CHECK(factorOf("kg") == factorOf("g").times(1000));
    CHECK(factorOf("mg").times(1000) == factorOf("g"));
    // NIST Handbook 44, appendix C: 1 avoirdupois pound = 453.592 37 g exactly = 16 ounces.
    CHECK(factorOf("lb") == exactly("453.59237"));
    CHECK(factorOf("oz").times(16) == factorOf("lb"));
}

TEST_CASE("spoons and cups divide the US gallon of 231 cubic inches", "[quantity]") {
    // NIST SP 811, B.8: 1 in = 2.54 cm exactly, so 1 cubic inch = 16.387064 mL.
    const Decimal cubicInch = exactly("16.387064");
    // NIST Handbook 44, appendix C: 1 gallon = 231 cubic inches = 16 cups = 128 fluid ounces;
    // 1 cup = 16 tablespoons = 48 teaspoons; 1 tablespoon = 3 teaspoons = 1/2 fluid ounce.
    CHECK(factorOf("cup").times(16) == cubicInch.times(231));
    CHECK(factorOf("tbsp").times(16) == factorOf("cup"));
    CHECK(factorOf("tsp").times(3) == factorOf("tbsp"));
    CHECK(factorOf("tsp").times(48) == factorOf("cup"));
    CHECK(factorOf("tbsp").times(256) == cubicInch.times(231));
    CHECK(factorOf("l") == factorOf("ml").times(1000));  // SI Brochure, 9th edition, table 8
}

TEST_CASE("spoons of labels and of metric kitchens are whole millilitres", "[quantity]") {
    using enum MeasureSystem;
    // 21 CFR 101.9(b)(5)(viii): a teaspoon is 5 mL, a tablespoon 15 mL, a cup 240 mL.
    CHECK(factorOf("tsp", UsLabel) == exactly("5"));
    CHECK(factorOf("tbsp", UsLabel) == exactly("15"));
    CHECK(factorOf("cup", UsLabel) == exactly("240"));
    // Common practice: metric spoons of 5 and 15 mL, metric cup of 250 mL.
    CHECK(factorOf("tsp", Metric) == exactly("5"));
    CHECK(factorOf("tbsp", Metric) == exactly("15"));
    CHECK(factorOf("cup", Metric) == exactly("250"));
}

TEST_CASE("every unit is found by its symbol and names its source", "[quantity]") {
    for (const Unit& unit : allUnits()) {
        CAPTURE(unit.symbol);
        CHECK(findUnit(unit.symbol, unit.system.value_or(MeasureSystem::Metric)) == &unit);
        CHECK_FALSE(unit.source.empty());
        CHECK(unit.factor > exactly("0"));
        CHECK((unit.kind == UnitKind::Volume || !unit.system));
    }
    CHECK(findUnit("mL", MeasureSystem::Metric) == findUnit("ml", MeasureSystem::UsLabel));
    CHECK(findUnit("L", MeasureSystem::Metric) == findUnit("l", MeasureSystem::UsLabel));
    CHECK(findUnit("Tbsp", MeasureSystem::Metric) == nullptr);
    CHECK(findUnit("", MeasureSystem::Metric) == nullptr);
}

TEST_CASE("a measure system is named as documents write it", "[quantity]") {
    using enum MeasureSystem;
    for (const MeasureSystem system : {UsCustomary, UsLabel, Metric})
        CHECK(measureSystemNamed(nameOf(system)) == system);
    CHECK(nameOf(UsLabel) == "label");
    CHECK_FALSE(measureSystemNamed("imperial"));
    CHECK_FALSE(measureSystemNamed("US"));
}
