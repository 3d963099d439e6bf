#include <catch2/catch.hpp>

#include "db/build_table/assumed_spread.h"

using namespace nettare;

namespace {

TableFood foodWith(const char* group, Component component, double mean, double standardError,
                   int n) {
    TableFood food;
    food.group = group;
    food.profile.per100g[indexOf(component)] = mean;
    food.profile.spread[indexOf(component)] = {
        .standardError = standardError, .n = n, .assumedRelative = {}};
    return food;
}

HouseholdMeasure measureOf(const char* unit, double grams, std::optional<double> deviation) {
    HouseholdMeasure measure;
    measure.unit = unit;
    measure.grams = grams;
    measure.standardDeviation = deviation;
    return measure;
}

}  // namespace

TEST_CASE("the median is the middle value, or the mean of the middle two", "[spread]") {
    CHECK_FALSE(medianOf({}));
    CHECK(medianOf({5}) == 5.0);
    CHECK(medianOf({9, 1, 5}) == 5.0);
    CHECK(medianOf({9, 1, 5, 7}) == 6.0);
}

TEST_CASE("a group's spread is the median of SE sqrt(n) / mean", "[spread]") {
    const AssumedSpreads assumed = assumedSpreads(
        {foodWith("fish", Component::FAT, 10, 0.5, 4), foodWith("fish", Component::FAT, 10, 1, 9),
         foodWith("fish", Component::FAT, 5, 1, 16), foodWith("oil", Component::FAT, 100, 0, 4)});
    // 0.5 x 2 / 10 = 0.1; 1 x 3 / 10 = 0.3; 1 x 4 / 5 = 0.8; an oil without any scatter: 0
    CHECK(assumed.byGroup.at("fish")[indexOf(Component::FAT)] == 0.3);
    CHECK(assumed.byGroup.at("oil")[indexOf(Component::FAT)] == 0.0);
    CHECK(*assumed.overAllGroups[indexOf(Component::FAT)] == Approx(0.2));
    CHECK_FALSE(assumed.overAllGroups[indexOf(Component::NA)]);
}

TEST_CASE("a mean of zero and a component by closure have no relative spread", "[spread]") {
    const AssumedSpreads assumed =
        assumedSpreads({foodWith("fish", Component::VITC, 0, 0.1, 4),
                        foodWith("fish", Component::CHOCDF, 5, 0.1, 4),
                        foodWith("fish", Component::ENERC_KCAL, 90, 1, 4),
                        foodWith("fish", Component::ENERC_KJ, 377, 4, 4)});
    for (const auto& median : assumed.byGroup.at("fish")) CHECK_FALSE(median);
}

TEST_CASE("measures by volume and by the piece scatter apart", "[spread]") {
    TableFood food;
    food.measures = {measureOf("cup", 100, 5), measureOf("tbsp", 10, 1), measureOf("fl_oz", 30, 6),
                     measureOf("clove", 4, 1), measureOf("tsp", 5, std::nullopt)};
    const MeasureSpreads spreads = measureSpreads({food});
    CHECK(spreads.volumeRelative == 0.1);
    CHECK(spreads.volumeRows == 3);
    CHECK(spreads.pieceRelative == 0.25);
    CHECK(spreads.pieceRows == 1);
    CHECK_FALSE(measureSpreads({}).pieceRelative);
}
