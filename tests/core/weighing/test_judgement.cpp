#include "core/weighing/judgement.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/nutrition/student_t.h"

using namespace nettare;

namespace {

PieceStatistics singles(const std::vector<double>& grams) {
    std::vector<SeriesReading> readings;
    readings.reserve(grams.size());
    for (const double each : grams) readings.push_back({each, 1, 0});
    return *pieceStatistics(readings, {0.14, 8});
}

}  // namespace

TEST_CASE("an earlier spread and one's own pool by their freedom", "[weighing]") {
    const KnownSpread both = pooled({2, 8}, {4, 2});
    CHECK(both.freedom == 10);
    CHECK(both.spread == Approx(std::sqrt((8 * 4 + 2 * 16) / 10.0)));
}

TEST_CASE("the next piece scatters more than the mean", "[weighing]") {
    const PieceStatistics two = singles({10, 12});
    // Two readings: t = 12.7 (Student's table, one degree of freedom).
    CHECK(nextPieceHalfWidth(two, coverageFactor) ==
          Approx(12.71 * std::sqrt(2.0) * std::sqrt(1.5)));
}

TEST_CASE("more weighings narrow the interval down to the scatter of the pieces and no further",
          "[weighing]") {
    const PieceStatistics series = singles({9.6, 9.9, 10.1, 9.7, 9.8});
    const double now = halfWidthAfter(series, 36, 0, coverageFactor);
    CHECK(halfWidthAfter(series, 36, 5, coverageFactor) < now);
    const double floor = 1.96 * std::sqrt(36.0) * series.spread;
    CHECK_FALSE(weighingsUntil(series, 36, floor * 0.99, coverageFactor));
    const auto more = weighingsUntil(series, 36, now * 0.7, coverageFactor);
    REQUIRE(more);
    CHECK(halfWidthAfter(series, 36, *more, coverageFactor) <= now * 0.7);
    CHECK(halfWidthAfter(series, 36, *more - 1, coverageFactor) > now * 0.7);
    CHECK(weighingsUntil(series, 36, now, coverageFactor) == 0);
}

TEST_CASE("a pooled spread takes the place of an assumed one and stays above the rounding",
          "[weighing]") {
    const PieceStatistics one = pooledWith(singles({10}), {0.5, 6});
    CHECK_FALSE(one.spreadAssumed);
    CHECK(one.spread == 0.5);
    CHECK(one.freedom == 6);
    // By hand: s^2 = (8 x 1 + 1 x 2) / 9.
    const PieceStatistics two = pooledWith(singles({10, 12}), {1, 8});
    CHECK(two.spread == Approx(std::sqrt(10.0 / 9)));
    CHECK(two.freedom == 9);
    const auto coarse = pieceStatistics({{10, 1, 0.4}, {10, 1, 0.4}}, {0.14, 8});
    CHECK(pooledWith(*coarse, {0.01, 100}).spread == 0.4);
}

TEST_CASE("the least half-width is that of the pieces' own scatter", "[weighing]") {
    const PieceStatistics series = singles({9.6, 9.9, 10.1, 9.7, 9.8});
    CHECK(floorHalfWidth(series, 36, coverageFactor) == Approx(1.96 * 6 * series.spread));
    CHECK(floorHalfWidth(series, 36, coverageFactor) <
          halfWidthAfter(series, 36, 100000, coverageFactor));
    // An assumed spread stays as little known as it was: t(0.975; 8) = 2.306 (Student's table).
    const PieceStatistics one = singles({10});
    CHECK(floorHalfWidth(one, 36, coverageFactor) == Approx(2.306 * 6 * 1.4));
}

TEST_CASE("a net under twenty steps of the scale is coarse", "[weighing]") {
    CHECK_FALSE(coarseShare(20, 1));
    CHECK(*coarseShare(19.9, 1) == Approx(0.0205).margin(0.0001));  // 0.41 d of 20 d is 2 %
    CHECK(*coarseShare(5, 1) == Approx(0.408248 / 5).epsilon(1e-6));
    CHECK_FALSE(coarseShare(0, 1));
}

TEST_CASE("what a scale's display leaves out is a rectangle, and of a net the sum of two",
          "[weighing]") {
    // JCGM 100:2008, 4.3.7: u = d/sqrt(12) for one displayed value; a net has two, 0.41 d.
    constexpr double kStep = 0.5;
    constexpr int kReadings = 100000;
    std::mt19937 generator{20261127U};
    const auto grams = [&generator] {
        return 1000.0 * static_cast<double>(generator()) / 4294967296.0;
    };
    const auto leftOut = [](double mass) { return mass - kStep * std::round(mass / kStep); };
    double ofOne = 0;
    double ofNet = 0;
    for (int i = 0; i < kReadings; ++i) {
        const double gross = leftOut(grams());
        const double tare = leftOut(grams());
        ofOne += gross * gross;
        ofNet += (gross - tare) * (gross - tare);
    }
    CHECK(std::sqrt(ofOne / kReadings) == Approx(kStep / std::sqrt(12.0)).epsilon(0.01));
    CHECK(std::sqrt(ofNet / kReadings) == Approx(kStep * std::sqrt(2.0 / 12)).epsilon(0.01));
    CHECK(*coarseShare(5, kStep) * 5 == Approx(std::sqrt(ofNet / kReadings)).epsilon(0.01));
}
