#include "core/food/measure_scaling.h"

#include <catch2/catch.hpp>

#include "core/food/group_density.h"

using namespace nettare;

TEST_CASE("half a cup of 143 g and a cup of 279 g do not scale", "[food]") {
    // USDA SR28 06150 barbecue sauce, with the deviations of its 54 data points.
    CHECK_FALSE(scaleAlike({0.5, "cup", "", 143, 54, 6.154}, {1, "cup", "", 279, 54, 13.399}));
    CHECK_FALSE(scaleAlike({0.5, "cup", "", 143, 0, {}}, {1, "cup", "", 279, 0, {}}));
}

TEST_CASE("measures scale within half a gram each and twice their standard errors", "[food]") {
    CHECK(scaleAlike({0.5, "cup", "", 124, 0, {}}, {1, "cup", "", 246, 0, {}}) == false);
    CHECK(scaleAlike({0.5, "cup", "", 124, 0, {}}, {1, "cup", "", 246.6, 0, {}}));
    CHECK(scaleAlike({0.5, "cup", "", 124, 4, 1}, {1, "cup", "", 246, 0, {}}));
    CHECK(scaleAlike({1, "tbsp", "", 14.2, 0, {}}, {1, "cup", "", 227, 0, {}}));
}

TEST_CASE("different things need not scale", "[food]") {
    CHECK(scaleAlike({1, "cup", "sliced", 87, 0, {}}, {1, "cup", "chopped", 160, 0, {}}));
    CHECK(scaleAlike({1, "bulb", "", 234, 0, {}}, {1, "cup", "", 87, 0, {}}));
}

TEST_CASE("the density of a group is the median of its foods with its scatter", "[food]") {
    const auto food = [](const char* group, std::vector<HouseholdMeasure> measures) {
        TableFood one;
        one.group = group;
        one.measures = std::move(measures);
        return one;
    };
    const double cup = 236.5882365;
    // The cup counts before the spoon; what is chopped does not.
    const std::vector<TableFood> foods{
        food("oil", {{1, "tbsp", "", 99, 0, {}}, {1, "cup", "", 0.9 * cup, 0, {}}}),
        food("oil", {{0.5, "cup", "", 0.5 * cup, 0, {}}}),
        food("oil", {{1, "cup", "", 1.2 * cup, 0, {}}}),
        food("oil", {{1, "cup", "chopped", 0.1 * cup, 0, {}}}),
        food("nut", {{1, "cup", "", 0.5 * cup, 0, {}}}),
        food("nut", {{1, "cup", "", 0.6 * cup, 0, {}}}),
    };
    const auto densities = groupDensities(foods);
    REQUIRE(densities.size() == 1);
    CHECK(densities[0].group == "oil");
    CHECK(densities[0].foods == 3);
    CHECK(densities[0].gramsPerMl == Approx(1.0));
    // sqrt((0.1^2 + 0.2^2) / 2)
    CHECK(densities[0].relativeSpread == Approx(0.158114).epsilon(1e-5));
    CHECK(densities[0].within() == Approx(0.158114 * 1.7320508).epsilon(1e-5));
}
