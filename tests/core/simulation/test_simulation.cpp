#include "core/simulation/simulation.h"

#include <algorithm>
#include <atomic>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/simulation/draws.h"

using namespace nettare;

namespace {

const double kOnePerWidth = std::sqrt(12.0);  ///< width of a rectangle of standard deviation 1

/// Adds so many inputs of mean 0, each of its own standard deviation.
DrawChunk addedUp(const std::vector<double>& normal, const std::vector<double>& rectangular) {
    return [=](std::uint64_t chunk, std::uint32_t seed, std::vector<double>& values) {
        Draws draws{seed, chunk};
        std::vector<double> drawn(values.size());
        for (const double u : normal) {
            draws.normals(drawn);
            for (std::size_t i = 0; i < drawn.size(); ++i) values[i] += u * drawn[i];
        }
        for (const double u : rectangular) {
            draws.uniforms(drawn);
            for (std::size_t i = 0; i < drawn.size(); ++i)
                values[i] += u * kOnePerWidth * (drawn[i] - 0.5);
        }
    };
}

/// The values 1, 2, 3 ... in some order.
void countTrials(std::uint64_t chunk, std::uint32_t, std::vector<double>& values) {
    for (std::size_t i = 0; i < values.size(); ++i)
        values[values.size() - 1 - i] = static_cast<double>(chunk * kChunkTrials + i + 1);
}

/// Deviation of a weight in mg from its nominal 100 g: JCGM 101:2008, 9.3.1, with its inputs.
void calibrateMass(std::uint64_t chunk, std::uint32_t seed, std::vector<double>& values) {
    Draws draws{seed, chunk};
    const std::size_t count = values.size();
    std::vector<double> reference(count), difference(count), air(count), weight(count), own(count);
    draws.normals(reference);
    draws.normals(difference);
    for (std::vector<double>* each : {&air, &weight, &own}) draws.uniforms(*each);
    for (std::size_t i = 0; i < count; ++i) {
        const double mass = 100'000.000 + 0.050 * reference[i] + 1.234 + 0.020 * difference[i];
        const double airDensity = 1.10 + 0.20 * air[i];
        const double densityOfWeight = 7000 + 2000 * weight[i];
        const double densityOfReference = 7950 + 100 * own[i];
        values[i] =
            mass * (1 + (airDensity - 1.2) * (1 / densityOfWeight - 1 / densityOfReference)) -
            100'000;
    }
}

SimulationPlan millionOf(std::uint32_t seed) {
    SimulationPlan plan;
    plan.seed = seed;
    return plan;
}

}  // namespace

TEST_CASE("four normal inputs have the interval of JCGM 101, 9.2.2", "[simulation]") {
    // JCGM 101:2008, 9.2.2, from memory: u = 2.00, [-3.92, 3.92].
    const auto found = simulate(millionOf(1), addedUp({1, 1, 1, 1}, {}));
    REQUIRE(found);
    CHECK(found->mean == Approx(0).margin(0.01));
    CHECK(found->u == Approx(2).margin(0.01));
    CHECK(found->low == Approx(-3.92).margin(0.03));
    CHECK(found->high == Approx(3.92).margin(0.03));
    CHECK(agree(2, -3.92, 3.92, *found));
}

TEST_CASE("four rectangular inputs have the interval of JCGM 101, 9.2.3", "[simulation]") {
    // JCGM 101:2008, 9.2.3, from memory: u = 2.00, [-3.88, 3.88]; GUM +-3.92 agrees at 0.05.
    const auto found = simulate(millionOf(1), addedUp({}, {1, 1, 1, 1}));
    REQUIRE(found);
    CHECK(found->u == Approx(2).margin(0.01));
    CHECK(found->low == Approx(-3.88).margin(0.02));
    CHECK(found->high == Approx(3.88).margin(0.02));
}

TEST_CASE("one wide rectangle rules the interval of JCGM 101, 9.2.4", "[simulation]") {
    // JCGM 101:2008, 9.2.4, from memory: u = 10.1, [-17.0, 17.0]; GUM [-19.9, 19.9] does not agree.
    const auto found = simulate(millionOf(1), addedUp({}, {1, 1, 1, 10}));
    REQUIRE(found);
    CHECK(found->u == Approx(10.1).margin(0.06));
    CHECK(found->low == Approx(-17.0).margin(0.06));
    CHECK(found->high == Approx(17.0).margin(0.06));
    CHECK_FALSE(agree(10.1, -19.9, 19.9, *found));
}

TEST_CASE("the mass calibration of JCGM 101, 9.3 needs a simulation", "[simulation]") {
    // JCGM 101:2008, 9.3, table 5, from memory, in mg: simulated mean 1.2341, u 0.0754,
    // [1.0834, 1.3825]; to first order 1.2340, u 0.0539, [1.1285, 1.3395], which does not agree.
    const auto found = simulate(millionOf(1), calibrateMass);
    REQUIRE(found);
    CHECK(found->mean == Approx(1.2341).margin(0.0004));
    CHECK(found->u == Approx(0.0754).margin(0.0003));
    // The printed ends are those of the shortest interval, which slides more than it widens.
    CHECK(found->low == Approx(1.0834).margin(0.0015));
    CHECK(found->high == Approx(1.3825).margin(0.0015));
    CHECK(found->high - found->low == Approx(1.3825 - 1.0834).margin(0.0010));
    CHECK_FALSE(agree(0.0539, 1.1285, 1.3395, *found));
}

TEST_CASE("the interval leaves as many trials out below as above", "[simulation]") {
    SimulationPlan plan;
    // JCGM 101:2008, 7.7: q = 95, r = (100 - 95 + 1) / 2 = 3 in whole numbers.
    plan.trials = 100;
    const auto hundred = simulate(plan, countTrials);
    CHECK(hundred->low == 3);
    CHECK(hundred->high == 98);
    // q = 190,000 and r = 5,000.
    plan.trials = 200'000;
    const auto many = simulate(plan, countTrials);
    CHECK(many->low == 5'000);
    CHECK(many->high == 195'000);
    CHECK(many->mean == Approx(100'000.5));
    CHECK(std::ranges::is_sorted(many->sorted));
    CHECK(many->sorted.size() == 200'000);
    CHECK(many->sorted.back() == 200'000);
    CHECK(many->probabilityAtMost(50'000) == 0.25);
    CHECK(many->probabilityAtMost(0) == 0);
    CHECK(many->probabilityAtMost(1e9) == 1);
}

TEST_CASE("one number has no spread, and no trial no result", "[simulation]") {
    SimulationPlan plan;
    plan.trials = 70'000;
    const auto found =
        simulate(plan, [](std::uint64_t, std::uint32_t, std::vector<double>& values) {
            std::ranges::fill(values, 0.1);
        });
    REQUIRE(found);
    CHECK(found->mean == 0.1);
    CHECK(found->u == 0);
    CHECK(found->low == 0.1);
    CHECK(found->high == 0.1);
    CHECK(agree(0, 0.1, 0.1, *found));
    plan.trials = 0;
    CHECK_FALSE(simulate(plan, countTrials));
}

TEST_CASE("the number of threads changes no trial", "[simulation]") {
    SimulationPlan plan;
    plan.trials = 5 * kChunkTrials + 1234;
    plan.seed = 20261126;
    const auto draw = addedUp({1, 2}, {3});
    plan.threads = 1;
    const auto one = simulate(plan, draw);
    for (const unsigned threads : {0U, 2U, 3U, 16U}) {
        CAPTURE(threads);
        plan.threads = threads;
        const auto more = simulate(plan, draw);
        CHECK(more->sorted == one->sorted);
        CHECK(more->mean == one->mean);
        CHECK(more->u == one->u);
        CHECK(more->low == one->low);
        CHECK(more->high == one->high);
    }
    plan.seed = 20261127;
    CHECK(simulate(plan, draw)->sorted != one->sorted);
}

TEST_CASE("a simulation tells how far it is and ends when it is told to", "[simulation]") {
    SimulationPlan plan;
    plan.trials = 10 * kChunkTrials;
    std::vector<std::uint64_t> told;
    plan.goOn = [&](std::uint64_t done) {
        told.push_back(done);
        return true;
    };
    REQUIRE(simulate(plan, countTrials));
    CHECK(told.size() == 10);
    CHECK(std::ranges::is_sorted(told));
    CHECK(told.back() == plan.trials);

    std::atomic<int> drawn = 0;
    plan.threads = 2;
    plan.goOn = [](std::uint64_t done) { return done < 3 * kChunkTrials; };
    const auto counted = [&](std::uint64_t chunk, std::uint32_t seed, std::vector<double>& values) {
        ++drawn;
        countTrials(chunk, seed, values);
    };
    CHECK_FALSE(simulate(plan, counted));
    CHECK(drawn >= 3);
    CHECK(drawn <= 4);  // the other thread's chunk may have begun
}

TEST_CASE("intervals agree within half a unit of the second digit of u", "[simulation]") {
    Simulation simulation;
    simulation.u = 1;
    simulation.low = 10;
    simulation.high = 20;
    // u = 2.6 is 26 x 10^-1: the tolerance is 0.05.
    CHECK(agree(2.6, 10.04, 19.96, simulation));
    CHECK_FALSE(agree(2.6, 10.06, 20, simulation));
    CHECK_FALSE(agree(2.6, 10, 20.06, simulation));
    // 0.996 is written 1.0, 10 x 10^-1; 0.994 is 99 x 10^-2.
    CHECK(agree(0.996, 10.04, 20, simulation));
    CHECK_FALSE(agree(0.994, 10.04, 20, simulation));
    CHECK(agree(0.994, 10.004, 20, simulation));
    CHECK_FALSE(agree(0, 10, 20, simulation));
}
