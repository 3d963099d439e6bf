#include "core/label/household_unit.h"

#include <catch2/catch.hpp>

#include "label_examples.h"

namespace nettare {

namespace {

std::string symbolPrinted(std::string_view printed) {
    const Unit* unit = householdUnit(printed, MeasureSystem::UsLabel);
    return unit == nullptr ? "" : std::string{unit->symbol};
}

}  // namespace

TEST_CASE("a household unit is known however a package prints it", "[label]") {
    for (const char* printed : {"tbsp", "Tbsp", "TBSP.", "tbsp.", "Tbs", "tablespoon",
                                "Tablespoons", "tablespoon(s)", "table spoons", "Tbsp (14 g)"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed) == "tbsp");
    }
    for (const char* printed : {"tsp", "Tsp.", "teaspoons", "teaspoon(s)"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed) == "tsp");
    }
    for (const char* printed : {"cup", "Cups", "CUP", "cup (240 mL)", "cup(s)"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed) == "cup");
    }
    for (const char* printed : {"fl oz", "Fl. Oz.", "fl.oz.", "FL OZ (355 mL)", "floz",
                                "fluid ounce", "fluid ounces", "Fluid Oz.", "fluid ounce(s)"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed) == "fl oz");
    }
    for (const char* printed : {"oz", "oz.", "Ounces", "OZ (28 g)"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed) == "oz");
    }
    CHECK(symbolPrinted("sticks") == "stick");
    CHECK(symbolPrinted("imp pint") == "imp pint");
}

TEST_CASE("what counts pieces is no household unit", "[label]") {
    for (const char* printed : {"", "slice", "Crackers (30 g)", "can", "(30 g)", "fluid",
                                "cup cake", "flour", ".", ")", "()"}) {
        INFO(printed);
        CHECK(symbolPrinted(printed).empty());
    }
    CHECK(householdUnit("fl oz", MeasureSystem::Metric) == nullptr);
}

TEST_CASE("a piece word of a package stands without its brackets", "[label]") {
    CHECK(householdPiece("Crackers (30 g)") == "crackers");
    CHECK(householdPiece(" slice ") == "slice");
    CHECK(householdPiece("(30 g)") == "(30 g)");
}

TEST_CASE("a spoon is held against like foods however it is spelled", "[label]") {
    // Ten times too much in two tablespoons, as in the test of the plain spelling.
    for (const char* unit : {"tbsp.", "Tbsp", "Tbsp.", "tablespoon(s)", "tbsp (300 g)"}) {
        INFO(unit);
        const auto findings = checkLabel(withServing(usBiscuit(), "300", "2", unit));
        REQUIRE(findings.size() == 1);
        CHECK(findings.front().kind == LabelFindingKind::UnlikeMeasure);
    }
    for (const char* unit : {"oz.", "Oz", "ounce(s)"}) {
        INFO(unit);
        CHECK(checkLabel(withServing(usBiscuit(), "28", "1", unit)).empty());
        CHECK(checkLabel(withServing(usBiscuit(), "82", "1", unit)).front().kind ==
              LabelFindingKind::UnlikeMeasure);
    }
    LabelFacts drink = withServing(usBiscuit(), "355", "12", "fl. oz.");
    drink.servingInMillilitres = true;
    drink.density = LabelDensity{Decimal{1, 0}, Decimal{0, 0}};
    CHECK(checkLabel(drink).empty());
    CHECK_FALSE(checkLabel(withServing(drink, "35", "12", "fl. oz.")).empty());
}

}  // namespace nettare
