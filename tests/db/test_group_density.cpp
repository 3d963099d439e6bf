#include <catch2/catch.hpp>

#include "small_table.h"
#include "starter.h"

using namespace nettare;

TEST_CASE("the oils of the starter weigh 0.92 g a millilitre, by the median of fourteen",
          "[starter]") {
    const FoodTable table = openStarter();
    const auto oil = table.groupDensity("oil");
    REQUIRE(oil);
    REQUIRE(*oil);
    CHECK((*oil)->foods == 14);
    // 218 g a cup of 236.588 mL, eight of them; olive oil 216 g, coconut and flaxseed oil as well.
    CHECK((*oil)->gramsPerMl == Approx(218 / 236.5882365).epsilon(1e-6));
    CHECK((*oil)->relativeSpread == Approx(0.0044).margin(0.00005));
    CHECK((*oil)->reason() == "oil: median of 14 foods of the table");
}

TEST_CASE("a group of too few foods has no density, and an unknown one none", "[starter]") {
    const FoodTable table = openStarter();
    CHECK_FALSE(*table.groupDensity("water"));
    CHECK_FALSE(*table.groupDensity("seasoning"));
    CHECK_FALSE(*table.groupDensity("stone"));
    const auto all = table.groupDensities();
    REQUIRE(all);
    CHECK(all->size() == 30);
    for (const GroupDensity& density : *all) CHECK(density.foods >= kFewestOfGroup);
}

TEST_CASE("a food's own density is used by nothing but its own lines", "[starter]") {
    // Beef is in no spoon; no group speaks for it.
    const FoodTable table = openStarter();
    CHECK_FALSE(*table.groupDensity("beef"));
    CHECK_FALSE(gramsPerMlOf(foodIn(table, "13325").measures));
    CHECK(*gramsPerMlOf(foodIn(table, "04053").measures) == Approx(216 / 236.5882365));
}
