#include "core/weighing/series.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/student_t.h"
#include "strd.h"

using namespace nettare;

TEST_CASE("mean and deviation keep the certified digits of NIST StRD", "[weighing]") {
    // NIST Statistical Reference Datasets, univariate summary statistics, certified values.
    struct Certified {
        const char* set;
        std::vector<double> data;
        double mean, deviation;
    };
    const Certified sets[] = {
        {"NumAcc1", {10000001, 10000003, 10000002}, 10000002, 1},
        {"NumAcc2", strd::numAcc2(), 1.2, 0.1},
        {"NumAcc3", strd::numAcc3(), 1000000.2, 0.1},
        {"Michelso", strd::michelso(), 299.852400000000, 0.0790105478190518},
        {"Mavro", strd::mavro(), 2.00185600000000, 0.000429123454003053},
    };
    for (const Certified& certified : sets) {
        CAPTURE(certified.set);
        const MeanAndDeviation found = meanAndDeviation(certified.data);
        CHECK_THAT(found.mean, Catch::Matchers::WithinRel(certified.mean, 1e-14));
        CHECK_THAT(*found.deviation, Catch::Matchers::WithinRel(certified.deviation, 1e-8));
    }
    CHECK_FALSE(meanAndDeviation({1.0}).deviation);
}

TEST_CASE("readings of one piece are the usual mean and standard deviation", "[weighing]") {
    const auto series = pieceStatistics(
        {{9.6, 1, 0.01}, {9.9, 1, 0.01}, {10.1, 1, 0.01}, {9.7, 1, 0.01}}, {0.14, 8});
    REQUIRE(series);
    const MeanAndDeviation usual = meanAndDeviation({9.6, 9.9, 10.1, 9.7});
    CHECK(series->mean == Approx(usual.mean));
    CHECK(series->spread == Approx(*usual.deviation));
    CHECK(series->freedom == 3);
    CHECK(series->lowest == 9.6);
    CHECK(series->highest == 10.1);
    CHECK_FALSE(series->spreadAssumed);
}

TEST_CASE("a reading of several pieces weighs as many", "[weighing]") {
    // By hand: n = 8, m = (10 + 14 + 66)/8 = 11.25; s^2 = (1.5625 + 7.5625 + 6 x 0.0625)/2 = 4.75.
    const auto series = pieceStatistics({{10, 1, 0}, {14, 1, 0}, {66, 6, 0}}, {0.14, 8});
    REQUIRE(series);
    CHECK(series->pieces == 8);
    CHECK(series->mean == Approx(11.25));
    CHECK(series->spread * series->spread == Approx(4.75));
}

TEST_CASE("one reading has no spread of its own and borrows the assumed one", "[weighing]") {
    const auto series = pieceStatistics({{234, 1, 0.3}}, {0.14, 8});
    REQUIRE(series);
    CHECK(series->spreadAssumed);
    CHECK(series->spread == Approx(0.14 * 234));
    CHECK(series->freedom == 8);
    CHECK(pieceStatistics({}, {0.14, 8}).error().code == ErrorCode::SeriesEmpty);
}

TEST_CASE("equal readings are no more certain than the scale's rounding", "[weighing]") {
    const auto series = pieceStatistics({{10, 1, 0.4}, {10, 1, 0.4}, {20, 2, 0.4}}, {0.14, 8});
    REQUIRE(series);
    CHECK(series->spread == Approx(0.4));
}

TEST_CASE("other pieces scatter about an uncertain mean, weighed ones only beside themselves",
          "[weighing]") {
    PieceStatistics series;
    series.pieces = 10;
    series.mean = 10;
    series.spread = 2;
    const TotalVariance others = varianceOfOthers(series, 30);
    CHECK(others.ofMean == Approx(30.0 * 30 * 4 / 10));
    CHECK(others.ofPieces == Approx(30.0 * 4));
    CHECK(varianceAmong(series, 10).ofPieces == 0);
    CHECK(varianceAmong(series, 30).ofPieces == Approx(30.0 * 20 * 4 / 10));
    // However many are weighed, the scatter of the pieces stays.
    series.pieces = 1000000;
    CHECK(varianceOfOthers(series, 30).ofMean + varianceOfOthers(series, 30).ofPieces >= 30.0 * 4);
}

TEST_CASE("a ratio is the ratio of sums with the spread of its residuals", "[weighing]") {
    const auto ratio = ratioStatistics({{200, 160, 0}, {300, 246, 0}, {100, 82, 0}}, {0.14, 8});
    REQUIRE(ratio);
    CHECK(ratio->ratio == Approx(488.0 / 600));
    double squares = 0;
    for (const auto& [x, y] : {std::pair{200.0, 160.0}, {300.0, 246.0}, {100.0, 82.0}})
        squares += std::pow(y - 488.0 / 600 * x, 2);
    CHECK(ratio->residualSpread == Approx(std::sqrt(squares / 2)));
    CHECK(ratio->ratioUncertainty() == Approx(std::sqrt(squares / 2) / (std::sqrt(3.0) * 200)));
    const auto single = ratioStatistics({{200, 160, 0}}, {0.14, 8});
    CHECK(single->spreadAssumed);
    CHECK(single->residualSpread == Approx(0.14 * 0.2 * 200));
    CHECK(ratioStatistics({{0, 0, 0}}, {0.14, 8}).error().code == ErrorCode::NothingWeighed);
}

TEST_CASE("Grubbs' test asks about one value and only from seven readings on", "[weighing]") {
    // Grubbs 1969, table of two-sided 5 % critical values (from memory): G(8) = 2.126.
    const std::vector<double> values{10, 10.1, 9.9, 10, 10.2, 9.8, 10, 14};
    const double t = studentT(1 - 0.05 / 16, 6);
    CHECK(grubbsOutlier(values, t) == std::optional<std::size_t>{7});
    const double t2 = t * t;
    CHECK(7 / std::sqrt(8.0) * std::sqrt(t2 / (6 + t2)) == Approx(2.126).margin(0.001));
    CHECK_FALSE(grubbsOutlier({10, 10.1, 9.9, 10, 10.2, 9.8, 10, 10.1}, t));
    CHECK_FALSE(grubbsOutlier({10, 10, 10, 10, 10, 30}, t));
}
