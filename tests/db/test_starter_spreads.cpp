#include <catch2/catch.hpp>

#include "starter.h"

using namespace nettare;

TEST_CASE("pieces scatter by 14 percent and volumes by 7 in the table's own measures",
          "[starter]") {
    const FoodTable table = openStarter();
    const MeasureSpreads& spreads = table.measureSpreads();
    CHECK(spreads.pieceRows == 85);
    CHECK(spreads.volumeRows == 132);
    CHECK(*spreads.pieceRelative == Approx(0.138).margin(0.0005));
    CHECK(*spreads.volumeRelative == Approx(0.066).margin(0.0005));
}

TEST_CASE("a value with its own standard error needs no assumed spread", "[starter]") {
    const FoodTable table = openStarter();
    const TableFood butter = foodIn(table, "01001");
    const Spread& water = butter.profile.spread[indexOf(Component::WATER)];
    CHECK(water.standardError == 0.061);
    CHECK_FALSE(water.assumedRelative);
}

TEST_CASE("no spread is assumed for a missing value, nor for carbohydrate and energy",
          "[starter]") {
    const FoodTable table = openStarter();
    for (const std::string& number : starterNumbers()) {
        const TableFood food = foodIn(table, number);
        for (const ComponentFacts& facts : allComponents()) {
            const Spread& spread = food.profile.spread[indexOf(facts.component)];
            INFO(number << " " << facts.tagname);
            CHECK_FALSE((spread.standardError && spread.assumedRelative));
            if (!food.profile[facts.component]) CHECK_FALSE(spread.assumedRelative);
            const bool closure = facts.component == Component::CHOCDF ||
                                 facts.component == Component::ENERC_KCAL ||
                                 facts.component == Component::ENERC_KJ;
            if (closure) CHECK_FALSE(spread.assumedRelative);
        }
    }
}

TEST_CASE("an assumed spread is the median of SE sqrt(n)/mean over the rows of the food's group",
          "[starter]") {
    const FoodTable table = openStarter();
    const auto assumed = [&](const char* number, Component component) {
        return foodIn(table, number).profile.spread[indexOf(component)].assumedRelative;
    };
    // WATER of fresh herbs, from SE and n of the release: 02044 0.020790, 11156 0.019910, 11165
    // 0.007747, 11297 0.025259; fresh thyme has none of its own.
    CHECK(*assumed("02049", Component::WATER) == Approx(0.0203497).epsilon(1e-5));
    // SODIUM of eggs: 01123 0.019630, 01124 0.038439, 01125 0.119584, 01129 0.055672.
    CHECK(*assumed("01128", Component::NA) == Approx(0.0470556).epsilon(1e-5));
    // No pastry has a spread for sodium: the median over all 345 rows that have.
    CHECK(*assumed("18338", Component::NA) == Approx(0.3141641).epsilon(1e-6));
    // No row at all has one for FOLDFE.
    CHECK_FALSE(assumed("18338", Component::FOLDFE));
}
