#include "core/weighing/outlier.h"

#include <catch2/catch.hpp>

#include "core/nutrition/judged_series.h"

using namespace nettare;

namespace {

std::vector<SeriesReading> alone(const std::vector<double>& each, double rounding = 0) {
    std::vector<SeriesReading> readings;
    readings.reserve(each.size());
    for (const double one : each) readings.push_back({one, 1, rounding});
    return readings;
}

}  // namespace

TEST_CASE("one piece far from seven others is asked about", "[weighing]") {
    CHECK(oddReading(alone({10, 10.1, 9.9, 10, 14, 10.2, 9.8, 10}), studentLaw()) == 4U);
    CHECK_FALSE(oddReading(alone({10, 10.1, 9.9, 10, 10.2, 9.8, 10}), studentLaw()));
    CHECK_FALSE(oddReading(alone({10, 10, 10, 10, 10, 30}), studentLaw()));
}

TEST_CASE("a step of the scale is no question", "[weighing]") {
    const std::vector<double> steps{10, 10, 10, 10, 10, 10, 10, 11};
    CHECK(oddReading(alone(steps), studentLaw()) == 7U);
    CHECK_FALSE(oddReading(alone(steps, 0.408), studentLaw()));
}

TEST_CASE("a light piece among readings of many is judged as one piece", "[weighing]") {
    // Ten pieces at once are within 0.1 g of the mean of one; a single piece may be 0.4 g off.
    std::vector<SeriesReading> readings{{100.5, 10, 0}, {99.4, 10, 0},  {100.9, 10, 0},
                                        {99.1, 10, 0},  {100.2, 10, 0}, {99.9, 10, 0},
                                        {10.4, 1, 0}};
    CHECK_FALSE(oddReading(readings, studentLaw()));
    readings.back().grams = 12;
    CHECK(oddReading(readings, studentLaw()) == 6U);
}

TEST_CASE("a trim that loses far more than the others is asked about", "[weighing]") {
    std::vector<RatioReading> trims{{200, 160, 0}, {300, 241, 0}, {100, 81, 0}, {250, 199, 0},
                                    {150, 121, 0}, {220, 177, 0}, {180, 100, 0}};
    CHECK(oddReading(trims, studentLaw()) == 6U);
    trims.back().after = 144;
    CHECK_FALSE(oddReading(trims, studentLaw()));
}
