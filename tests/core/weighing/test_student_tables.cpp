#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

#include "core/nutrition/judged_series.h"
#include "core/nutrition/student_t.h"
#include "core/weighing/series.h"

using namespace nettare;

TEST_CASE("Student's t is that of the printed tables", "[weighing]") {
    // Two-sided 95 %, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, and JCGM
    // 100:2008, table G.2 (to two decimals there); from memory.
    struct Row {
        double freedom, t;
    };
    constexpr Row kRows[] = {{1, 12.706}, {2, 4.303},  {3, 3.182},  {4, 2.776},  {5, 2.571},
                             {6, 2.447},  {7, 2.365},  {8, 2.306},  {9, 2.262},  {10, 2.228},
                             {12, 2.179}, {15, 2.131}, {20, 2.086}, {25, 2.060}, {30, 2.042},
                             {40, 2.021}, {60, 2.000}, {120, 1.980}};
    for (const Row& row : kRows) {
        CAPTURE(row.freedom);
        CHECK(studentT(0.975, row.freedom) == Approx(row.t).margin(0.0005));
        // Four significant digits.
        CHECK(studentLaw().coverage(row.freedom) ==
              Approx(row.t).margin(row.freedom == 1 ? 0.005 : 0.0005));
    }
    CHECK(studentLaw().coverage(std::numeric_limits<double>::infinity()) == 1.96);
}

namespace {

/// 0, 0, ... 0 with one value that is `distance` standard deviations from the mean: with a
/// between the others at +1 and -1, G = x (n - 1)/n / s, solved for x by halving.
bool isAsked(int readings, double distance) {
    double low = 0;
    double high = 1e6;
    std::vector<double> values(static_cast<std::size_t>(readings), 0.0);
    for (std::size_t i = 1; i < values.size(); ++i) values[i] = i % 2 == 0 ? 1 : -1;
    for (int step = 0; step < 200; ++step) {
        values[0] = (low + high) / 2;
        const MeanAndDeviation all = meanAndDeviation(values);
        ((values[0] - all.mean) / *all.deviation < distance ? low : high) = values[0];
    }
    const double n = readings;
    return grubbsOutlier(values, studentT(1 - 0.05 / (2 * n), n - 2)).has_value();
}

}  // namespace

TEST_CASE("Grubbs' test asks from the tabled critical value on", "[weighing]") {
    // Two-sided 5 % (one-sided 2.5 %) critical values of Grubbs and Beck, Technometrics 14 (1972),
    // from memory.
    struct Row {
        int readings;
        double critical;
    };
    constexpr Row kRows[] = {{7, 2.020},  {8, 2.126},  {9, 2.215}, {10, 2.290},
                             {12, 2.412}, {15, 2.549}, {20, 2.709}};
    for (const Row& row : kRows) {
        CAPTURE(row.readings);
        CHECK(isAsked(row.readings, row.critical + 0.001));
        CHECK_FALSE(isAsked(row.readings, row.critical - 0.001));
    }
}
