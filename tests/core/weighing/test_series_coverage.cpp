#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>

#include "core/nutrition/judged_series.h"

using namespace nettare;

namespace {

constexpr double kMean = 40;
constexpr double kSpread = 4;
constexpr int kOthers = 12;
constexpr int kLotsOfSeries = 20000;

/// Normal pieces by Box and Muller's way, from the generator's raw output.
class Pieces {
public:
    explicit Pieces(unsigned seed) : generator_{seed} {}

    double next() {
        const double radius = std::sqrt(-2 * std::log(uniform()));
        return kMean + kSpread * radius * std::cos(2 * std::numbers::pi * uniform());
    }

    /// The weight of that many together.
    double next(int count) {
        double sum = 0;
        for (int i = 0; i < count; ++i) sum += next();
        return sum;
    }

private:
    double uniform() { return (static_cast<double>(generator_()) + 0.5) / 4294967296.0; }

    std::mt19937 generator_;
};

bool covers(const ValueWithin& interval, double truth) {
    return std::fabs(interval.value - truth) <= interval.within;
}

/// Shares of trials whose interval holds the truth.
struct Covered {
    double mean = 0, next = 0, others = 0;
};

Covered coveredBy(int readings, int piecesEach) {
    Pieces pieces{20261127U + static_cast<unsigned>(readings)};
    SeriesQuestion question;
    question.assumed = {0.14, 8};
    question.others = kOthers;
    Covered covered;
    std::vector<SeriesReading> weighed(static_cast<std::size_t>(readings));
    for (int trial = 0; trial < kLotsOfSeries; ++trial) {
        for (SeriesReading& reading : weighed) reading = {pieces.next(piecesEach), piecesEach, 0};
        const auto report = judgedSeries(weighed, question);
        covered.mean += covers(report->mean, kMean) ? 1 : 0;
        covered.next += covers(report->next, pieces.next()) ? 1 : 0;
        covered.others += covers(*report->others, pieces.next(kOthers)) ? 1 : 0;
    }
    return {covered.mean / kLotsOfSeries, covered.next / kLotsOfSeries,
            covered.others / kLotsOfSeries};
}

}  // namespace

TEST_CASE("nineteen in twenty intervals hold what they speak of", "[weighing]") {
    const int readings = GENERATE(2, 4, 8);
    const int piecesEach = GENERATE(1, 5);
    CAPTURE(readings, piecesEach);
    const Covered covered = coveredBy(readings, piecesEach);
    CHECK(covered.mean == Approx(0.95).margin(0.015));
    CHECK(covered.next == Approx(0.95).margin(0.015));
    CHECK(covered.others == Approx(0.95).margin(0.015));
}
