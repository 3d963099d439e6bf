#include "core/weighing/against_table.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/judged_series.h"
#include "core/nutrition/student_t.h"

using namespace nettare;

namespace {

/// Single readings without rounding; 14 % with eight degrees of freedom where there is one alone.
PieceStatistics grams(const std::vector<double>& each) {
    std::vector<SeriesReading> readings;
    readings.reserve(each.size());
    for (const double one : each) readings.push_back({one, 1, 0});
    return *pieceStatistics(readings, {0.14, 8});
}

PublishedMean published(double mean, std::optional<double> deviation = {}, int count = 0) {
    return {"a table", mean, count, deviation};
}

AgainstPublished held(const PieceStatistics& series, const PublishedMean& table) {
    return againstTable(series, table, coverageFactor);
}

}  // namespace

TEST_CASE("a series is compared with a table only where both have a spread", "[weighing]") {
    const PieceStatistics series = grams({9.6, 9.9, 10.1, 9.7, 9.8});
    CHECK(held(series, published(10)).verdict == AgainstTable::CannotBeTold);
    CHECK(held(series, published(10, 0.2, 1)).verdict == AgainstTable::CannotBeTold);
    CHECK(held(grams({9.6}), published(10, 0.2, 8)).verdict == AgainstTable::CannotBeTold);
    CHECK(held(series, published(9.9, 0.2, 8)).verdict == AgainstTable::Agrees);
    CHECK(held(series, published(12, 0.2, 8)).verdict == AgainstTable::Differs);
}

TEST_CASE("Welch's freedom lies between the smaller side and the sum of both", "[weighing]") {
    // Equal variances and sizes: nu = 2 (n - 1) = 8, so the limit is t(0.975; 8) = 2.306 (table).
    const PieceStatistics series = grams({-1.5811388, -0.7905694, 0, 0.7905694, 1.5811388});
    const double s = series.spread;
    const double limit = 2.306 * std::sqrt(2 * s * s / 5);
    CHECK(held(series, published(limit * 1.001, s, 5)).verdict == AgainstTable::Differs);
    CHECK(held(series, published(limit * 0.999, s, 5)).verdict == AgainstTable::Agrees);
    CHECK(held(series, published(limit, s, 5)).freedom == Approx(8));
}

TEST_CASE("four dry limes are really less than the table's", "[weighing]") {
    // USDA SR28 09160, lime juice, raw: 1 lime yields 44 g, n = 12, s = 11.031. By hand: m = 31.5,
    // s^2 = 17/3, u^2 = 17/12 + 11.031^2/12 = 11.557, t = -12.5/3.3995 = -3.677.
    const AgainstPublished limes = held(grams({30, 33, 29, 34}), published(44, 11.031, 12));
    CHECK(limes.verdict == AgainstTable::Differs);
    CHECK(limes.difference == Approx(-12.5));
    CHECK(limes.t == Approx(-3.68).margin(0.005));
    CHECK(limes.freedom == Approx(13.3).margin(0.05));
    CHECK_FALSE(limes.publishedExact);
    CHECK_FALSE(limes.moreToTell);
}

TEST_CASE("one lime shows no difference, and it is said how many would", "[weighing]") {
    const AgainstPublished lime = held(grams({36}), published(44, 11.031, 12));
    CHECK(lime.verdict == AgainstTable::CannotBeTold);
    CHECK(lime.t == 0);
    CHECK(lime.freedom == 0);
    // s = 14 % of 36 g = 5.04 g. Three limes: u^2 = 25.4/3 + 10.14 = 18.6, so that 8 g are 1.85 u;
    // six: 14.4 and 2.11 u, nu = 16, t = 2.12; seven: 13.77, 2.156 u, nu = 16.8, t = 2.11.
    CHECK(lime.moreToTell == 6);
}

TEST_CASE("one ear of corn tells nothing, and hundreds would", "[weighing]") {
    // Common practice: an ear of sweet corn of about 7.5 x 2 in gave 152 g of kernels where a table
    // says 154 g a cup, without a spread.
    const AgainstPublished ear = held(grams({152}), published(154));
    CHECK(ear.verdict == AgainstTable::CannotBeTold);
    CHECK(ear.publishedExact);
    REQUIRE(ear.moreToTell);
    // s = 21.28 g, so that 2 g are t s / sqrt(n) where n = (t s / 2)^2, t = 1.965: 437 ears.
    CHECK(*ear.moreToTell + 1 == 438);
    const double n = *ear.moreToTell + 1;
    const double s = 0.14 * 152;
    CHECK(coverageFactor(n - 1) * s / std::sqrt(n) < 2);
    CHECK(coverageFactor(n - 2) * s / std::sqrt(n - 1) >= 2);
}

TEST_CASE("an exact mean may lie outside already, and equal ones are never told apart",
          "[weighing]") {
    const PieceStatistics series = grams({9.6, 9.9, 10.1, 9.7, 9.8});
    const AgainstPublished outside = held(series, published(10.6));
    CHECK(outside.verdict == AgainstTable::CannotBeTold);
    CHECK(outside.moreToTell == 0);
    CHECK_FALSE(held(grams({10}), published(10)).moreToTell);
    // 0.01 g beside 1.4 g: seventy-five thousand.
    CHECK_FALSE(held(grams({10}), published(10.01)).moreToTell);
}

TEST_CASE("more readings show what the table's own spread leaves visible", "[weighing]") {
    const PieceStatistics series = grams({9.6, 9.9, 10.1, 9.7, 9.8});
    const AgainstPublished near = held(series, published(9.95, 0.1, 20));
    CHECK(near.verdict == AgainstTable::Agrees);
    REQUIRE(near.moreToTell);
    CHECK(*near.moreToTell > 0);
    // The table's mean itself is no better known than 1 g.
    CHECK_FALSE(held(series, published(10, 5, 25)).moreToTell);
}
