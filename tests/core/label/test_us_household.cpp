#include <catch2/catch.hpp>

#include "core/label/us_household.h"

#include "label_cases.h"

using namespace nettare;

namespace {

UsHouseholdMeasure measureOfCase(const std::string& name) {
    if (name == "cup") return UsHouseholdMeasure::Cup;
    if (name == "tbsp") return UsHouseholdMeasure::Tablespoon;
    if (name == "tsp") return UsHouseholdMeasure::Teaspoon;
    if (name == "fl_oz" || name == "fl oz") return UsHouseholdMeasure::FluidOunce;
    if (name == "oz") return UsHouseholdMeasure::Ounce;
    FAIL("unknown measure " << name);
    return UsHouseholdMeasure::Piece;
}

std::string householdText(UsHouseholdMeasure measure, double amount) {
    return usHouseholdText(measure, amount).value();
}

}  // namespace

TEST_CASE("household amounts halfway between two steps go up", "[label]") {
    for (const LabelCase& row : labelCases("us_household_tie")) {
        CAPTURE(row.id, row.source);
        const std::string text =
            householdText(measureOfCase(row.input.at("measure")), row.number("value"));
        // The file writes 1.5 where a label writes 1 1/2.
        CHECK(row.accepts(text == "1 1/2" ? "1.5" : text));
    }
}

TEST_CASE("cups, spoons and pieces print in the steps of a label", "[label]") {
    const auto cup = UsHouseholdMeasure::Cup;
    const auto tablespoon = UsHouseholdMeasure::Tablespoon;
    const auto teaspoon = UsHouseholdMeasure::Teaspoon;
    // 21 CFR 101.9(b)(5)(i); FDA guide of 1993; 1/8 teaspoon from memory.
    CHECK(householdText(cup, 0.66) == "2/3");
    CHECK(householdText(cup, 0.3) == "1/3");
    CHECK(householdText(cup, 0.29) == "1/4");
    CHECK(householdText(cup, 1.1) == "1");
    CHECK(householdText(cup, 1.125) == "1 1/4");
    CHECK(householdText(cup, 2.95) == "3");
    CHECK(householdText(tablespoon, 1.3) == "1 1/3");
    CHECK(householdText(tablespoon, 1.6) == "1 2/3");
    CHECK(householdText(tablespoon, 2.4) == "2");
    CHECK(householdText(teaspoon, 0.1) == "1/8");
    CHECK(householdText(teaspoon, 0.7) == "3/4");
    CHECK(householdText(teaspoon, 1.4) == "1");
    CHECK(householdText(UsHouseholdMeasure::Piece, 2.0) == "2");
    CHECK(householdText(UsHouseholdMeasure::Piece, 2.5) == "3");
}

TEST_CASE("an amount too small for its measure is refused", "[label]") {
    CHECK(usHouseholdText(UsHouseholdMeasure::Cup, 0.1).error().code == ErrorCode::OutOfRange);
    CHECK(usHouseholdText(UsHouseholdMeasure::Tablespoon, 0.49).error().value("found") == "0.49");
    CHECK(usHouseholdText(UsHouseholdMeasure::Piece, 0).error().code == ErrorCode::OutOfRange);
    CHECK(usHouseholdText(UsHouseholdMeasure::Piece, 1e10).error().code == ErrorCode::OutOfRange);
}

TEST_CASE("a label's cup, spoon and ounce hold what the regulation says", "[label]") {
    for (const LabelCase& row : labelCases("us_label_measure")) {
        CAPTURE(row.id, row.source);
        const std::string& from = row.input.at("from");
        const std::size_t space = from.find(' ');
        const auto amount = Decimal::read(from.substr(0, space))->fraction();
        const auto measure = usLabelMeasure(measureOfCase(from.substr(space + 1)));
        REQUIRE(measure);
        const auto held = amount->times(*measure->amount.fraction());
        REQUIRE(held);
        CHECK(held->denominator() == 1);
        CHECK(row.accepts(std::to_string(held->numerator()) + " " + std::string{measure->unit}));
    }
    CHECK_FALSE(usLabelMeasure(UsHouseholdMeasure::Piece));
}

TEST_CASE("pieces per serving follow their share of the reference amount", "[label]") {
    for (const LabelCase& row : labelCases("us_discrete_unit")) {
        CAPTURE(row.id, row.source);
        const auto pieces = usPiecesPerServing(row.number("unit_g"), row.number("racc_g"));
        REQUIRE(pieces);
        const auto text = [&](int count) {
            return std::to_string(count) + (count == 1 ? " unit" : " units") +
                   (pieces->onlyIfEatenAtOnce ? " if eaten at once" : "");
        };
        CHECK(row.accepts(text(pieces->fewest)));
        CHECK(row.accepts(text(pieces->most)));
        CHECK((pieces->fewest != pieces->most) == (row.lawful.size() == 2));
    }
    CHECK(usPiecesPerServing(0, 30).error().code == ErrorCode::NotPositive);
    CHECK(usPiecesPerServing(1e-9, 30).error().code == ErrorCode::OutOfRange);
}
