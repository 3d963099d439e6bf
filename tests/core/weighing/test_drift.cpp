#include "core/weighing/drift.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/student_t.h"

using namespace nettare;

namespace {

std::optional<Drift> driftOfGrams(const std::vector<double>& each, double rounding = 0) {
    std::vector<SeriesReading> readings;
    readings.reserve(each.size());
    for (const double one : each) readings.push_back({one, 1, rounding});
    return driftOf(readings, coverageFactor);
}

}  // namespace

TEST_CASE("pieces that shrink from week to week drift", "[weighing]") {
    // By hand: places -2 ... 2 about their mean, slope = -10.1/10, residuals -0.06, 0.05, 0.06,
    // -0.03, -0.02 with squares 0.011; s^2 = 0.011/3, u = s/sqrt(10) = 0.01915.
    const auto drift = driftOfGrams({14, 13.1, 12.1, 11, 10});
    REQUIRE(drift);
    CHECK(drift->perReading == Approx(-1.01));
    CHECK(drift->freedom == 3);
    CHECK(drift->t == Approx(-1.01 / std::sqrt(0.011 / 3 / 10)));
    CHECK(drift->significant);
}

TEST_CASE("pieces that only scatter do not drift, and three are too few to ask", "[weighing]") {
    CHECK_FALSE(driftOfGrams({9.6, 9.9, 10.1, 9.7, 9.8})->significant);
    CHECK_FALSE(driftOfGrams({1, 2, 3}));
}

TEST_CASE("steps of the scale alone are no drift", "[weighing]") {
    CHECK_FALSE(driftOfGrams({10, 10, 10, 11}, 0.41)->significant);
    const auto still = driftOfGrams({10, 10, 10, 10});
    CHECK_FALSE(still->significant);
    CHECK(still->t == 0);
}

TEST_CASE("a reading of several pieces pulls the line as many times", "[weighing]") {
    // The heavy readings lie on a level; the light one off it has one piece of 31.
    const std::vector<SeriesReading> readings{{100, 10, 0}, {100, 10, 0}, {12, 1, 0}, {100, 10, 0}};
    const auto drift = driftOf(readings, coverageFactor);
    REQUIRE(drift);
    // By hand: mean place 42/31, mean 312/31 g; slope = sum k x y' / sum k x^2.
    const double middle = 42.0 / 31;
    const double mean = 312.0 / 31;
    double products = 0;
    double squares = 0;
    for (int i = 0; i < 4; ++i) {
        const double k = i == 2 ? 1 : 10;
        products += k * (i - middle) * ((i == 2 ? 12 : 10) - mean);
        squares += k * (i - middle) * (i - middle);
    }
    CHECK(drift->perReading == Approx(products / squares));
    CHECK_FALSE(drift->significant);
}
