#include "core/nutrition/student_t.h"

#include <catch2/catch.hpp>
#include <limits>
#include <vector>

using namespace nettare;

TEST_CASE("Student's t is table G.2 of JCGM 100", "[nutrition]") {
    // JCGM 100:2008, annex G, table G.2, from memory: two-sided, to two decimals as printed.
    // Its 68.27, 95.45 and 99.73 are those of one, two and three normal standard deviations.
    const std::vector<double> percents{68.26895, 90, 95, 95.44997, 99, 99.73002};
    const std::vector<std::pair<double, std::vector<double>>> table{
        {1, {1.84, 6.31, 12.71, 13.97, 63.66, 235.80}},
        {2, {1.32, 2.92, 4.30, 4.53, 9.92, 19.21}},
        {3, {1.20, 2.35, 3.18, 3.31, 5.84, 9.22}},
        {4, {1.14, 2.13, 2.78, 2.87, 4.60, 6.62}},
        {5, {1.11, 2.02, 2.57, 2.65, 4.03, 5.51}},
        {6, {1.09, 1.94, 2.45, 2.52, 3.71, 4.90}},
        {8, {1.07, 1.86, 2.31, 2.37, 3.36, 4.28}},
        {10, {1.05, 1.81, 2.23, 2.28, 3.17, 3.96}},
        {12, {1.04, 1.78, 2.18, 2.23, 3.05, 3.76}},
        {16, {1.03, 1.75, 2.12, 2.17, 2.92, 3.54}},
        {20, {1.03, 1.72, 2.09, 2.13, 2.85, 3.42}},
        {50, {1.01, 1.68, 2.01, 2.05, 2.68, 3.16}},
        {std::numeric_limits<double>::infinity(), {1.000, 1.645, 1.960, 2.000, 2.576, 3.000}},
    };
    for (const auto& [freedom, row] : table)
        for (std::size_t i = 0; i < percents.size(); ++i) {
            CAPTURE(freedom, percents[i]);
            CHECK(studentT(0.5 + percents[i] / 200, freedom) == Approx(row[i]).margin(0.0051));
        }
}

TEST_CASE("the probability of a value gives its quantile back", "[nutrition]") {
    for (const double freedom : {1.0, 2.0, 7.5, 30.0, std::numeric_limits<double>::infinity()})
        for (const double p : {0.01, 0.3, 0.5, 0.975}) {
            CAPTURE(freedom, p);
            CHECK(studentProbability(studentT(p, freedom), freedom) == Approx(p));
        }
}
