#include <catch2/catch.hpp>
#include <cmath>

#include "core/label/us_rounding.h"
#include "core/nutrition/student_t.h"
#include "core/weighing/judgement.h"

using namespace nettare;

// FDA, Guidance for Industry: Guide for Developing and Using Data Bases for Nutrition Labeling,
// March 1998: protein of broccoli, a naturally occurring nutrient (class II), twelve samples.
TEST_CASE("FDA's declared value of protein in broccoli is 4 g", "[label]") {
    PieceStatistics samples;
    samples.readings = samples.pieces = 12;
    samples.mean = 4.6003;
    samples.spread = 0.6165770;
    samples.freedom = 11;
    // One-sided 95 % for one further sample: mean - t(0.95; 11) s sqrt(1 + 1/12).
    const auto oneSided = [](double freedom) { return studentT(0.95, freedom); };
    const double lower = samples.mean - nextPieceHalfWidth(samples, oneSided);
    CHECK(lower == Approx(3.4477).margin(0.00015));
    // 21 CFR 101.9(g)(4)(ii): what is found is at least 80 % of what is declared.
    const double declared = lower * 5 / 4;
    CHECK(declared == Approx(4.3096).margin(0.00015));
    CHECK(usAmountText(Component::PROCNT, declared) == "4");
}
