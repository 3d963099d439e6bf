#include <catch2/catch.hpp>

#include "core/label/us_daily_values.h"
#include "core/label/us_percent.h"

#include "label_cases.h"

using namespace nettare;

namespace {

std::string percentNumber(Component component, double amount) {
    std::string text = usPercentText(component, amount).value();
    REQUIRE(text.ends_with("%"));
    text.pop_back();
    return text;
}

void checkPercents(const std::string& topic, const std::string& amountKey,
                   const std::string& dailyKey) {
    for (const LabelCase& row : labelCases(topic)) {
        CAPTURE(row.id, row.source);
        const Component component = componentOfCase(row.input.at("nutrient"));
        CHECK(usDailyValue(component)->amount == Decimal::read(row.input.at(dailyKey)));
        const std::string percent = percentNumber(component, row.number(amountKey));
        CAPTURE(percent);
        CHECK(row.accepts(percent));
    }
}

}  // namespace

TEST_CASE("percents of reference values print as the published cases", "[label]") {
    checkPercents("us_pctdv_drv", "amount", "dv");
    checkPercents("us_pctdv_basis", "actual", "dv");
}

TEST_CASE("percents of vitamins and minerals print in steps of 2, 5 and 10", "[label]") {
    checkPercents("us_pctdv_rdi", "amount", "rdi");
    for (const LabelCase& row : labelCases("us_pctdv_vm")) {
        CAPTURE(row.id, row.source);
        // One percent of the potassium RDI, 4,700 mg, is 47 mg.
        CHECK(row.accepts(percentNumber(Component::K, row.number("percent") * 47)));
    }
}

TEST_CASE("the percent comes from the unrounded amount", "[label]") {
    // 8.4 g prints as 8 g; 8.4/78 is 10.8 %, 8/78 is 10.3 %. 21 CFR 101.9(d)(7)(ii).
    CHECK(percentNumber(Component::FAT, 8.4) == "11");
    CHECK(percentNumber(Component::FASAT, 1.2) == "6");
}

TEST_CASE("an amount that prints as 0 has 0 percent", "[label]") {
    CHECK(percentNumber(Component::FASAT, 0.49) == "0");  // 2.45 % of 20 g
    CHECK(percentNumber(Component::FASAT, 0.5) == "3");
    CHECK(percentNumber(Component::CHOLE, 1.9) == "0");
    CHECK(percentNumber(Component::FIBTG, 0.5) == "2");  // "less than 1g" is not 0
}

TEST_CASE("under 2 percent of an RDI prints as 0 percent", "[label]") {
    CHECK(percentNumber(Component::K, 93.9) == "0");  // 2 % is 94 mg
    CHECK(percentNumber(Component::K, 94) == "2");
    CHECK(percentNumber(Component::CU, 0.017) == "0");
}

TEST_CASE("no percent exists without a daily value or for what is no amount", "[label]") {
    CHECK(usPercentText(Component::FATRN, 1).error().code == ErrorCode::ComponentUnknown);
    CHECK(usPercentText(Component::SUGAR, 1).error().value("component") == "SUGAR");
    CHECK(usPercentText(Component::NA, -1).error().code == ErrorCode::OutOfRange);
}
