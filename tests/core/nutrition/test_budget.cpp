#include "core/nutrition/budget.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/nutrition/student_t.h"
#include "core/quantity/decimal.h"

using namespace nettare;

TEST_CASE("Student's t is the printed table", "[nutrition]") {
    // Quantiles by the incomplete beta function at 25 digits; agree with printed tables of t.
    const std::pair<double, double> table[] = {
        {1, 12.7062},  {2, 4.30265},  {3, 3.18245},  {4, 2.77645},  {5, 2.57058},
        {6, 2.44691},  {7, 2.36462},  {8, 2.30600},  {9, 2.26216},  {10, 2.22814},
        {11, 2.20099}, {16, 2.11991}, {20, 2.08596}, {30, 2.04227},
    };
    for (const auto& [freedom, t] : table) {
        CAPTURE(freedom);
        CHECK_THAT(studentT(0.975, freedom), Catch::Matchers::WithinRel(t, 3e-6));
    }
    CHECK_THAT(studentT(0.995, 16), Catch::Matchers::WithinRel(2.920782, 1e-6));
    CHECK_THAT(studentT(0.95, 11), Catch::Matchers::WithinRel(1.795885, 1e-6));
    const double infinite = std::numeric_limits<double>::infinity();
    CHECK(studentT(0.975, infinite) == Approx(1.959964));
}

TEST_CASE("the factor of an interval has four digits", "[nutrition]") {
    CHECK(coverageFactor(1) == 12.71);
    CHECK(coverageFactor(2) == 4.303);
    CHECK(coverageFactor(10) == 2.228);
    CHECK(coverageFactor(std::numeric_limits<double>::infinity()) == 1.96);
}

TEST_CASE("the factor of an interval is the quantile rounded once, for any freedom",
          "[nutrition]") {
    std::mt19937 random{20261126};
    const auto rounded = [](double freedom) {
        return roundedToStep(Decimal::fromDouble(studentT(0.975, freedom)), Decimal{1, -3}).value();
    };
    int wrong = 0;
    for (int i = 0; i < 10'000; ++i) {
        const double whole = static_cast<double>(random() % 9000);
        const double part = static_cast<double>(random()) / 4294967296.0;
        const double freedom = 2 + (i % 2 == 0 ? part * 10 : part * whole);
        if (coverageFactor(freedom) != rounded(freedom)) ++wrong;
    }
    // Where the fourth digit changes, either side of the change.
    double low = 4;
    double high = 5;
    while (std::nextafter(low, high) != high) {
        const double middle = low + (high - low) / 2;
        (rounded(middle) < rounded(4.5) ? high : low) = middle;
    }
    for (const double freedom : {low, high, low - 1e-9, high + 1e-9, low - 1e-7, high + 1e-7})
        if (coverageFactor(freedom) != rounded(freedom)) ++wrong;
    CHECK(rounded(low) != rounded(high));
    CHECK(wrong == 0);
}

TEST_CASE("terms that share one estimated spread enter as one term", "[nutrition]") {
    const Uncertainty apart = combine({{1, 3, 5, 0}, {1, 4, 5, 1}});
    const Uncertainty together = combine({{1, 3, 5, 0}, {1, 4, 5, 0}});
    CHECK(apart.u == Approx(5));
    CHECK(together.u == Approx(5));
    CHECK(together.freedom == Approx(5));
    CHECK(apart.freedom > together.freedom);
}

TEST_CASE("without finite freedom there is none to lose", "[nutrition]") {
    const double inf = std::numeric_limits<double>::infinity();
    CHECK(std::isinf(combine({{1, 3, inf, 0}, {2, 4, inf, 1}}).freedom));
    CHECK(combine({}).u == 0);
}

TEST_CASE("sources of one pool are one term wherever they stand in a block", "[nutrition]") {
    const SourceKey series{SourceKind::SeriesMean, 0, 0};
    const Source pieces{{SourceKind::SeriesScatter, 0, 1}, 2, 5, series};
    const Source others{{SourceKind::SeriesScatter, 0, 2}, 3, 5, series};
    const Source mean{series, 6, 5, series};
    const Source tare = ownSource({SourceKind::VesselTare, 0, 0}, 4);
    const Source second = ownSource({SourceKind::SeriesMean, 1, 0}, 5, 3);
    Block block;
    for (const Source& source : {pieces, tare, others, second, mean})
        block.row(source)[indexOf(Component::FAT)] += 0.5;
    const auto budget = budgetOf(block, {});
    const double inf = std::numeric_limits<double>::infinity();
    const Uncertainty byHand =
        combine({{0.5, 2, 5, 0}, {0.5, 4, inf, 1}, {0.5, 3, 5, 0}, {0.5, 5, 3, 2}, {0.5, 6, 5, 0}});
    CHECK(budget[indexOf(Component::FAT)].u == byHand.u);
    CHECK(budget[indexOf(Component::FAT)].freedom == byHand.freedom);
    CHECK(budget[indexOf(Component::NA)].u == 0);
}
