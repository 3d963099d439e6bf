#include <catch2/catch.hpp>

#include "core/label/us_daily_values.h"

using namespace nettare;

TEST_CASE("daily values are those of 2016, not the older ones still in circulation", "[label]") {
    struct Daily {
        Component component;
        const char* amount;
        DailyValueKind kind;
    };
    const auto drv = DailyValueKind::ReferenceValue;
    const auto rdi = DailyValueKind::RecommendedIntake;
    // 21 CFR 101.9(c)(9) and (c)(8)(iv), from memory but for riboflavin, potassium and copper.
    // Before 2016: fat 65 g, sodium 2,400 mg, carbohydrate 300 g, fibre 25 g, potassium 3,500 mg.
    const Daily rows[] = {
        {Component::FAT, "78", drv},     {Component::NA, "2300", drv},
        {Component::CHOCDF, "275", drv}, {Component::FIBTG, "28", drv},
        {Component::SUGAD, "50", drv},   {Component::K, "4700", rdi},
        {Component::VITD, "20", rdi},    {Component::CA, "1300", rdi},
        {Component::RIBF, "1.3", rdi},   {Component::CU, "0.9", rdi},
    };
    for (const Daily& row : rows) {
        CAPTURE(row.amount);
        const UsDailyValue* daily = usDailyValue(row.component);
        REQUIRE(daily != nullptr);
        CHECK(daily->component == row.component);
        CHECK(daily->amount == Decimal::read(row.amount));
        CHECK(daily->kind == row.kind);
    }
}

TEST_CASE("every daily value is positive and names its paragraph, or there is none", "[label]") {
    std::size_t withDailyValue = 0;
    for (const ComponentFacts& facts : allComponents()) {
        CAPTURE(facts.tagname);
        const UsDailyValue* daily = usDailyValue(facts.component);
        if (daily == nullptr) continue;
        ++withDailyValue;
        CHECK(daily->amount > Decimal{});
        CHECK(daily->source.starts_with("21 CFR 101.9(c)"));
    }
    CHECK(withDailyValue == 30);
    for (const Component none : {Component::FATRN, Component::SUGAR, Component::FAMS,
                                 Component::FAPU, Component::WATER, Component::FOL})
        CHECK(usDailyValue(none) == nullptr);
}
