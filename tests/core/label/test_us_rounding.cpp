#include <catch2/catch.hpp>

#include "core/label/us_daily_values.h"
#include "core/label/us_rounding.h"

#include "label_cases.h"

#include <limits>

using namespace nettare;

namespace {

void checkAmounts(const std::string& topic, Component component) {
    for (const LabelCase& row : labelCases(topic)) {
        CAPTURE(row.id, row.source);
        const auto text = usAmountText(component, row.number("value"));
        REQUIRE(text);
        CAPTURE(*text);
        CHECK(row.accepts(*text));
    }
}

std::string roundedText(Component component, double amount) {
    return usAmountText(component, amount).value();
}

}  // namespace

TEST_CASE("calories, fats, cholesterol and sodium print as the published cases", "[label]") {
    checkAmounts("us_calories", Component::ENERC_KCAL);
    checkAmounts("us_fat", Component::FAT);
    checkAmounts("us_saturated_fat", Component::FASAT);
    checkAmounts("us_trans_fat", Component::FATRN);
    checkAmounts("us_cholesterol", Component::CHOLE);
    checkAmounts("us_sodium", Component::NA);
}

TEST_CASE("carbohydrate, fibre, sugars and protein print as the published cases", "[label]") {
    checkAmounts("us_carbohydrate", Component::CHOCDF);
    checkAmounts("us_fiber", Component::FIBTG);
    checkAmounts("us_total_sugars", Component::SUGAR);
    checkAmounts("us_added_sugars", Component::SUGAD);
    checkAmounts("us_protein", Component::PROCNT);
}

TEST_CASE("vitamins and minerals print in the step recommended for their RDI", "[label]") {
    for (const LabelCase& row : labelCases("us_vm_amount")) {
        CAPTURE(row.id, row.source);
        const Component component = componentOfCase(row.input.at("nutrient"));
        CHECK(usDailyValue(component)->amount == Decimal::read(row.input.at("rdi")));
        CHECK(usAmountRule(component)->recommended);
        CHECK(row.accepts(roundedText(component, row.number("value"))));
    }
}

TEST_CASE("where the law leaves a choice the panel says 0, then less than, then the step",
          "[label]") {
    // 21 CFR 101.9(c)(1), (c)(3), (c)(6): "may".
    CHECK(roundedText(Component::ENERC_KCAL, 4.9) == "0");
    CHECK(roundedText(Component::CHOLE, 2) == "less than 5");
    CHECK(roundedText(Component::CHOLE, 5) == "less than 5");
    CHECK(roundedText(Component::CHOCDF, 0.49) == "0");
    CHECK(roundedText(Component::CHOCDF, 0.5) == "less than 1");
    CHECK(roundedText(Component::PROCNT, 0.99) == "less than 1");
    CHECK(roundedText(Component::CU, 0.04) == "0.04");
}

TEST_CASE("a tie is decided on the decimal, not on the binary number below it", "[label]") {
    CHECK(roundedText(Component::FAT, 0.1 * 7.5) == "1");
    CHECK(roundedText(Component::FE, 0.15) == "0.2");
    CHECK(roundedText(Component::ZN, 1.005 * 10) == "10.1");  // 10.049999999999999
    CHECK(roundedText(Component::SUGAD, 1.1 + 2.4) == "4");
}

TEST_CASE("a fat is named by its own paragraph and all fats print alike", "[label]") {
    CHECK(usAmountRule(Component::FATRN)->paragraph == "21 CFR 101.9(c)(2)(ii)");
    CHECK(usAmountRule(Component::SUGAD)->paragraph.find("from memory") != std::string_view::npos);
    for (const Component fat :
         {Component::FASAT, Component::FATRN, Component::FAMS, Component::FAPU})
        for (const double grams : {0.0, 0.49, 0.75, 4.74, 5.5, 20.2})
            CHECK(roundedText(fat, grams) == roundedText(Component::FAT, grams));
}

TEST_CASE("what no panel line can be is refused", "[label]") {
    CHECK(usAmountText(Component::WATER, 1).error().code == ErrorCode::ComponentUnknown);
    CHECK(usAmountText(Component::CAFFN, 1).error().value("component") == "CAFFN");
    CHECK(usAmountText(Component::FOL, 1).error().code == ErrorCode::ComponentUnknown);
    for (const double amount : {-0.1, 2e9, std::numeric_limits<double>::infinity(),
                                std::numeric_limits<double>::quiet_NaN()})
        CHECK(usAmountText(Component::FAT, amount).error().code == ErrorCode::OutOfRange);
    CHECK(roundedText(Component::FAT, -0.0) == "0");
    CHECK(roundedText(Component::K, 1e9) == "1000000000");
}
