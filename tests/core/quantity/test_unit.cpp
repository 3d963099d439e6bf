#include <catch2/catch.hpp>

#include "core/quantity/unit.h"

#include <string>
#include <tuple>

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

TEST_CASE("centilitres and decilitres are parts of the litre", "[quantity]") {
    // SI Brochure, 9th edition, table 7: centi 10^-2, deci 10^-1.
    CHECK(factorOf("cl").times(100) == factorOf("l"));
    CHECK(factorOf("dl").times(10) == factorOf("l"));
}

TEST_CASE("a US fluid ounce, pint and quart divide the US gallon", "[quantity]") {
    // NIST Handbook 44, appendix C: gallon = 4 quarts = 8 pints = 128 fluid ounces, 231 cubic
    // inches of 16.387064 mL.
    const Decimal gallon = exactly("16.387064").times(231);
    CHECK(factorOf("gal") == gallon);
    CHECK(factorOf("quart").times(4) == gallon);
    CHECK(factorOf("pint").times(8) == gallon);
    CHECK(factorOf("fl oz").times(128) == gallon);
    CHECK(factorOf("fl oz") == factorOf("tbsp").times(2));
    for (const std::string symbol : {"fl oz", "pint", "quart", "gal"})
        CHECK(factorOf(symbol.c_str()) == factorOf(("us " + symbol).c_str()));
}

TEST_CASE("imperial measures divide the gallon of 4.54609 litres", "[quantity]") {
    using enum MeasureSystem;
    // Weights and Measures Act 1985 (UK), schedule 1: 1 gallon = 4.546 09 cubic decimetres exactly
    // = 4 quarts = 8 pints = 160 fluid ounces. The cup of half a pint is common practice.
    const Decimal gallon = exactly("4546.09");
    CHECK(factorOf("imp gal") == gallon);
    CHECK(factorOf("imp quart").times(4) == gallon);
    CHECK(factorOf("imp pint").times(8) == gallon);
    CHECK(factorOf("imp fl oz").times(160) == gallon);
    CHECK(factorOf("cup", Imperial).times(2) == factorOf("imp pint"));
    for (const MeasureSystem system : {Imperial, Australian})
        for (const std::string symbol : {"fl oz", "pint", "quart", "gal"})
            CHECK(factorOf(symbol.c_str(), system) == factorOf(("imp " + symbol).c_str()));
}

TEST_CASE("British and Australian spoons are whole millilitres", "[quantity]") {
    using enum MeasureSystem;
    // Common practice: teaspoon 5, dessertspoon 10, tablespoon 15, in Australia 20 mL.
    for (const MeasureSystem system : {Imperial, Australian}) {
        CHECK(factorOf("tsp", system) == exactly("5"));
        CHECK(factorOf("dessertspoon", system) == exactly("10"));
    }
    CHECK(factorOf("tbsp", Imperial) == exactly("15"));
    CHECK(factorOf("tbsp", Australian) == exactly("20"));
    CHECK(factorOf("cup", Australian) == exactly("250"));
}

TEST_CASE("a label's fluid ounce is 30 mL and its pint the customary one", "[quantity]") {
    using enum MeasureSystem;
    CHECK(factorOf("fl oz", UsLabel) == exactly("30"));  // 21 CFR 101.9(b)(5)(viii)
    for (const char* symbol : {"pint", "quart", "gal"})
        CHECK(factorOf(symbol, UsLabel) == factorOf(symbol, UsCustomary));
}

TEST_CASE("a stick of butter is a quarter of a pound, of which scales know nothing", "[quantity]") {
    CHECK(factorOf("stick") == factorOf("oz").times(4));
    CHECK_FALSE(isShownByScales(*findUnit("stick", MeasureSystem::Metric)));
    CHECK_FALSE(isShownByScales(*findUnit("ml", MeasureSystem::Metric)));
    CHECK(isShownByScales(*findUnit("lb", MeasureSystem::Metric)));
}

TEST_CASE("a pinch, a dash and a drop are vague parts of a teaspoon", "[quantity]") {
    // Common practice: 1/16, 1/8 and 1/96 of a teaspoon, here of 5 mL; off by half at least.
    CHECK(factorOf("pinch").times(16) == exactly("5"));
    CHECK(factorOf("dash").times(8) == exactly("5"));
    CHECK(factorOf("drop").value() == Approx(5.0 / 96).epsilon(1e-3));
    for (const Unit& unit : allUnits()) {
        CAPTURE(unit.symbol);
        const bool vague = unit.symbol == "pinch" || unit.symbol == "dash" || unit.symbol == "drop";
        CHECK(unit.isVague() == vague);
        CHECK(unit.vagueness == exactly(vague ? "0.5" : "0"));
    }
}

TEST_CASE("things that old books measure by are vague volumes and no units", "[quantity]") {
    // Common practice, from memory: hazelnut 3 to 7, walnut 15 to 30, egg 50 to 65 mL.
    const std::tuple<const char*, double, double> cases[] = {
        {"hazelnut", 3, 7}, {"walnut", 15, 30}, {"egg", 50, 65}};
    for (const auto& [thing, low, high] : cases) {
        CAPTURE(thing);
        const Unit* size = findSizeOfThing(thing);
        REQUIRE(size != nullptr);
        const double half = size->factor.value() * size->vagueness.value();
        CHECK(size->factor.value() - half == Approx(low).epsilon(1e-3));
        CHECK(size->factor.value() + half == Approx(high).epsilon(1e-3));
        CHECK(size->isVague());
        CHECK(size->source.find("from memory") != std::string_view::npos);
        CHECK(findUnit(thing, MeasureSystem::UsCustomary) == nullptr);
    }
    CHECK(allSizesOfThings().size() == std::size(cases));
    CHECK(findSizeOfThing("cup") == nullptr);
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
    for (const char* symbol : {"fl oz", "pint", "quart", "gal"})
        CHECK(findUnit(symbol, MeasureSystem::Metric) == nullptr);
    CHECK(findUnit("Tbsp", MeasureSystem::Metric) == nullptr);
    CHECK(findUnit("", MeasureSystem::Metric) == nullptr);
}

TEST_CASE("a measure system is named as documents write it", "[quantity]") {
    using enum MeasureSystem;
    for (const MeasureSystem system : {UsCustomary, UsLabel, Metric, Imperial, Australian})
        CHECK(measureSystemNamed(nameOf(system)) == system);
    CHECK(nameOf(UsLabel) == "label");
    CHECK(nameOf(Australian) == "australian");
    CHECK_FALSE(measureSystemNamed("imp"));
    CHECK_FALSE(measureSystemNamed("US"));
}
