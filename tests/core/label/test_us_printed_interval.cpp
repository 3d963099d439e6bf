#include <catch2/catch.hpp>

#include "core/label/us_printed_interval.h"

using namespace nettare;

namespace {

struct IntervalCase {
    Component component;
    const char* printed;
    const char* low;
    const char* high;
    bool lowIncluded = true;
    bool highIncluded = true;
};

void checkInterval(const IntervalCase& row) {
    CAPTURE(factsOf(row.component).tagname, row.printed);
    const auto interval = usPrintedInterval(row.component, row.printed);
    REQUIRE(interval);
    CAPTURE(interval->low.text(), interval->high.text());
    CHECK(interval->low == Decimal::read(row.low));
    CHECK(interval->high == Decimal::read(row.high));
    CHECK(interval->lowIncluded == row.lowIncluded);
    CHECK(interval->highIncluded == row.highIncluded);
}

}  // namespace

TEST_CASE("a printed amount stands for all amounts that the law lets print so", "[label]") {
    // 21 CFR 101.9(c)(1) to (c)(7), FDA Food Labeling Guide, appendix H.
    const IntervalCase rows[] = {
        {Component::ENERC_KCAL, "0", "0", "5", true, false},
        {Component::ENERC_KCAL, "5", "2.5", "7.5"},
        {Component::ENERC_KCAL, "45", "42.5", "47.5"},
        {Component::ENERC_KCAL, "50", "47.5", "55"},
        {Component::ENERC_KCAL, "60", "55", "65"},
        {Component::ENERC_KCAL, "1,200", "1195", "1205"},
        {Component::FAT, "0", "0", "0.5", true, false},
        {Component::FAT, "0.5", "0.5", "0.75"},
        {Component::FAT, "4.5", "4.25", "4.75"},
        {Component::FASAT, "5", "4.75", "5.5"},
        {Component::FAPU, "14", "13.5", "14.5"},
        {Component::CHOLE, "0", "0", "2", true, false},
        {Component::CHOLE, "less than 5", "2", "5"},
        {Component::CHOLE, "5", "2.5", "7.5"},
        {Component::NA, "5", "5", "7.5"},
        {Component::NA, "140", "137.5", "145"},
        {Component::NA, "150", "145", "155"},
        {Component::CHOCDF, "0", "0", "0.5", true, false},
        {Component::CHOCDF, "1", "0.5", "1.5"},
        {Component::CHOCDF, "2", "1.5", "2.5"},
        {Component::PROCNT, "less than 1", "0", "1", true, false},
    };
    for (const IntervalCase& row : rows) checkInterval(row);
}

TEST_CASE("less than one gram is read in every way it is printed", "[label]") {
    for (const char* printed : {"less than 1 g", "less than 1", "<1", "< 1g", "Less than 1g",
                                "Contains less than 1 g", " <1 "})
        checkInterval({Component::FIBTG, printed, "0", "1", true, false});
    checkInterval({Component::NA, "140 mg", "137.5", "145"});
    checkInterval({Component::ENERC_KCAL, "50 kcal", "47.5", "55"});
    checkInterval({Component::VITD, "2mcg", "1.5", "2.5"});
    checkInterval({Component::VITD, "2.1 µg", "2.05", "2.15"});
}

TEST_CASE("a vitamin or mineral is known to its step or its last digit, the coarser", "[label]") {
    // FDA draft guidance on quantitative amounts; steps from 250 on from memory.
    checkInterval({Component::FE, "8", "7.5", "8.5"});
    checkInterval({Component::FE, "8.1", "8.05", "8.15"});
    checkInterval({Component::FE, "8.12", "8.07", "8.17"});
    checkInterval({Component::CA, "260", "255", "265"});
    checkInterval({Component::K, "235", "230", "240"});
    checkInterval({Component::VITC, "9", "8.5", "9.5"});
    checkInterval({Component::CU, "0.04", "0.035", "0.045"});
}

TEST_CASE("a vitamin or mineral printed as 0 is below 2 % of its daily value", "[label]") {
    // 21 CFR 101.9(c)(8)(iii): below 2 % of the RDI a zero may be declared. RDIs of (c)(8)(iv).
    checkInterval({Component::CA, "0", "0", "26", true, false});
    checkInterval({Component::K, "0", "0", "94", true, false});
    checkInterval({Component::CU, "0.00", "0", "0.018", true, false});
    // Rounded to the whole, as the law allows as well, it may be more.
    checkInterval({Component::FE, "0", "0", "0.5"});
    checkInterval({Component::VITD, "0 mcg", "0", "0.5"});
    checkInterval({Component::FE, "0.0", "0", "0.36", true, false});
    // Sodium has its own zero, and any other figure stands for what it did.
    checkInterval({Component::NA, "0", "0", "5", true, false});
    checkInterval({Component::CA, "10", "5", "15"});
}

TEST_CASE("what no lawful rounding prints is impossible", "[label]") {
    const std::pair<Component, const char*> rows[] = {
        {Component::ENERC_KCAL, "52"},   {Component::ENERC_KCAL, "55"},
        {Component::ENERC_KCAL, "2"},    {Component::ENERC_KCAL, "<5"},
        {Component::FAT, "0.7"},         {Component::FAT, "5.5"},
        {Component::FAT, "less than 1"}, {Component::NA, "143"},
        {Component::NA, "145"},          {Component::NA, "2"},
        {Component::CHOLE, "7"},         {Component::CHOLE, "<1"},
        {Component::CHOCDF, "1.5"},      {Component::PROCNT, "<2"},
        {Component::K, "<10"},
    };
    for (const auto& [component, printed] : rows) {
        CAPTURE(printed);
        const auto interval = usPrintedInterval(component, printed);
        REQUIRE_FALSE(interval);
        CHECK(interval.error().code == ErrorCode::LabelAmountImpossible);
        CHECK(interval.error().value("found") == printed);
        CHECK(interval.error().value("component") == factsOf(component).tagname);
    }
}

TEST_CASE("what is no amount, or one in another unit, is unreadable", "[label]") {
    for (const char* printed : {"", " ", "g", "-1", "<-1", "trace", "1.2.3", "5 mg", "5 oz",
                                "1,20,0", ",500", "less than", "1e2", "5g g", "5 %"}) {
        CAPTURE(printed);
        const auto interval = usPrintedInterval(Component::FAT, printed);
        REQUIRE_FALSE(interval);
        CHECK(interval.error().code == ErrorCode::LabelAmountUnreadable);
        CHECK(interval.error().value("component") == "FAT");
    }
    CHECK(usPrintedInterval(Component::WATER, "5").error().code == ErrorCode::ComponentUnknown);
}

TEST_CASE("the grams of a serving are known to the step they are printed in", "[label]") {
    struct Serving {
        const char* printed;
        const char* low;
        const char* high;
    };
    // 21 CFR 101.9(b)(7); the steps below 5 are from memory.
    const Serving rows[] = {
        {"14", "13.5", "14.5"},   {"28", "27.5", "28.5"},     {"5", "4.75", "5.5"},
        {"3", "2.75", "3.25"},    {"2", "1.95", "2.25"},      {"1.2", "1.15", "1.25"},
        {"14.0", "13.5", "14.5"}, {"14.2", "14.15", "14.25"}, {"3.3", "3.25", "3.35"},
    };
    for (const Serving& row : rows) {
        CAPTURE(row.printed);
        const DecimalInterval grams = servingGramsInterval(*Decimal::read(row.printed));
        CHECK(grams.low == Decimal::read(row.low));
        CHECK(grams.high == Decimal::read(row.high));
    }
}
