#include "core/simulation/draws.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "core/nutrition/student_t.h"

using namespace nettare;

namespace {

constexpr std::size_t kCount = 200'000;

struct Moments {
    double mean = 0, variance = 0;
};

Moments momentsOf(const std::vector<double>& values) {
    Moments moments;
    const auto count = static_cast<double>(values.size());
    for (const double value : values) moments.mean += value / count;
    for (const double value : values)
        moments.variance += (value - moments.mean) * (value - moments.mean) / count;
    return moments;
}

double shareAtMost(const std::vector<double>& values, double limit) {
    std::size_t count = 0;
    for (const double value : values) count += value <= limit ? 1 : 0;
    return static_cast<double>(count) / static_cast<double>(values.size());
}

/// Five standard deviations of a share that is counted.
double shareMargin(double p) {
    return 5 * std::sqrt(p * (1 - p) / static_cast<double>(kCount));
}

}  // namespace

TEST_CASE("normal draws have the quantiles of the normal law", "[simulation]") {
    std::vector<double> values(kCount);
    Draws{1, 0}.normals(values);
    const double inf = std::numeric_limits<double>::infinity();
    for (const double p : {0.001, 0.025, 0.25, 0.5, 0.8, 0.975, 0.999}) {
        CAPTURE(p);
        CHECK(shareAtMost(values, studentT(p, inf)) == Approx(p).margin(shareMargin(p)));
    }
}

TEST_CASE("uniform draws fill their interval alike", "[simulation]") {
    std::vector<double> values(kCount);
    Draws{1, 0}.uniforms(values);
    for (const double p : {0.01, 0.3, 0.5, 0.99}) {
        CAPTURE(p);
        CHECK(shareAtMost(values, p) == Approx(p).margin(shareMargin(p)));
    }
    CHECK(shareAtMost(values, 0) < 1e-4);
    CHECK(shareAtMost(values, 1) == 1);
}

TEST_CASE("chi-squared draws have mean nu and variance 2 nu", "[simulation]") {
    for (const double freedom : {0.5, 1.0, 1.5, 2.0, 3.0, 8.0, 19.0, 200.0}) {
        CAPTURE(freedom);
        std::vector<double> values(kCount);
        Draws{2, 0}.chiSquared(freedom, values);
        const Moments moments = momentsOf(values);
        CHECK(moments.mean == Approx(freedom).epsilon(0.02));
        CHECK(moments.variance == Approx(2 * freedom).epsilon(0.06));
    }
}

TEST_CASE("a normal draw times the factor of an estimated spread is Student's t", "[simulation]") {
    for (const double freedom : {1.0, 2.0, 4.5, 8.0, 19.0}) {
        std::vector<double> spreads(kCount), values(kCount);
        Draws draws{3, 0};
        draws.spreadFactors(freedom, spreads);
        draws.normals(values);
        for (std::size_t i = 0; i < kCount; ++i) values[i] *= spreads[i];
        for (const double p : {0.01, 0.025, 0.3, 0.975}) {
            CAPTURE(freedom, p);
            CHECK(shareAtMost(values, studentT(p, freedom)) == Approx(p).margin(shareMargin(p)));
        }
    }
}

TEST_CASE("seed and chunk give the same draws again and others give others", "[simulation]") {
    const auto first = [](std::uint32_t seed, std::uint64_t chunk) {
        std::vector<double> values(3);
        Draws{seed, chunk}.normals(values);
        return values;
    };
    CHECK(first(1, 7) == first(1, 7));
    CHECK(first(1, 7) != first(2, 7));
    CHECK(first(1, 7) != first(1, 8));
    CHECK(first(1, 0) != first(0, 1));
    CHECK(first(1, 1) != first(1, (1ULL << 32U) + 1));
}
