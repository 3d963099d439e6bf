#include "core/weighing/series_report.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/judged_series.h"
#include "strd.h"

using namespace nettare;

namespace {

std::vector<SeriesReading> single(const std::vector<double>& each, double rounding = 0) {
    std::vector<SeriesReading> readings;
    readings.reserve(each.size());
    for (const double one : each) readings.push_back({one, 1, rounding});
    return readings;
}

/// Fourteen per cent with eight degrees of freedom where one reading cannot tell.
SeriesQuestion asked() {
    SeriesQuestion question;
    question.assumed = {0.14, 8};
    return question;
}

const std::vector<double> kPrawns{9.6, 9.7, 9.8, 9.8, 9.9, 10.1};

}  // namespace

TEST_CASE("the report of a series keeps the certified digits of NIST StRD", "[weighing]") {
    // NIST Statistical Reference Datasets, univariate summary statistics, certified values.
    struct Certified {
        const char* set;
        std::vector<double> data;
        double mean, deviation;
    };
    const Certified sets[] = {
        {"NumAcc1", strd::numAcc1(), 10000002, 1},
        {"NumAcc2", strd::numAcc2(), 1.2, 0.1},
        {"NumAcc3", strd::numAcc3(), 1000000.2, 0.1},
        {"Michelso", strd::michelso(), 299.852400000000, 0.0790105478190518},
        {"Mavro", strd::mavro(), 2.00185600000000, 0.000429123454003053},
    };
    for (const Certified& certified : sets) {
        CAPTURE(certified.set);
        const auto report = judgedSeries(single(certified.data), asked());
        REQUIRE(report);
        CHECK_THAT(report->mean.value, Catch::Matchers::WithinRel(certified.mean, 1e-14));
        CHECK_THAT(report->statistics.spread,
                   Catch::Matchers::WithinRel(certified.deviation, 1e-8));
    }
}

TEST_CASE("six prawns say what a seventh and thirty-six others weigh", "[weighing]") {
    SeriesQuestion question = asked();
    question.others = 36;
    const auto report = judgedSeries(single(kPrawns), question);
    REQUIRE(report);
    // By hand: m = 58.9/6, s^2 = 0.148333/5, t(0.975; 5) = 2.571 (Student's table).
    const double s = std::sqrt(0.1483333333 / 5);
    CHECK(report->basis == SpreadBasis::Own);
    CHECK(report->mean.value == Approx(58.9 / 6));
    CHECK(report->mean.within == Approx(2.571 * s / std::sqrt(6.0)));
    CHECK(report->next.value == report->mean.value);
    CHECK(report->next.within == Approx(2.571 * s * std::sqrt(7.0 / 6)));
    REQUIRE(report->others);
    CHECK(report->others->value == Approx(36 * 58.9 / 6));
    CHECK(report->others->within == Approx(2.571 * s * std::sqrt(36 * 36 / 6.0 + 36)));
    CHECK(report->floorWithin == Approx(1.96 * s * 6));
    CHECK_FALSE(report->outlier);
    CHECK_FALSE(report->against);
    CHECK_FALSE(report->more);
    REQUIRE(report->drift);
}

TEST_CASE("one, two and three readings say how little they know", "[weighing]") {
    const auto one = judgedSeries(single({10}), asked());
    CHECK(one->basis == SpreadBasis::Assumed);
    CHECK(one->mean.within == Approx(2.306 * 1.4));
    CHECK(one->next.within == Approx(2.306 * 1.4 * std::sqrt(2.0)));
    CHECK_FALSE(one->drift);
    // t = 12.71 and 4.303.
    const auto two = judgedSeries(single({10, 11}), asked());
    CHECK(two->basis == SpreadBasis::FewOwn);
    CHECK(two->mean.within == Approx(12.71 * 0.5));
    const auto three = judgedSeries(single({10, 11, 12}), asked());
    CHECK(three->basis == SpreadBasis::FewOwn);
    CHECK(three->mean.within == Approx(4.303 / std::sqrt(3.0)));
    CHECK(judgedSeries(single({10, 11, 12, 11}), asked())->basis == SpreadBasis::Own);
    CHECK(judgedSeries({}, asked()).error().code == ErrorCode::SeriesEmpty);
}

TEST_CASE("pooling with an earlier spread makes two readings worth more", "[weighing]") {
    SeriesQuestion question = asked();
    question.earlier = EarlierSpread{{0.5, 9}, "prawns, 2025", 10};
    const auto two = judgedSeries(single({10, 11}), question);
    CHECK(two->basis == SpreadBasis::Pooled);
    // By hand: (9 x 0.25 + 1 x 0.5)/10 = 0.275; t(0.975; 10) = 2.228.
    CHECK(two->statistics.freedom == 10);
    CHECK(two->mean.within == Approx(2.228 * std::sqrt(0.275 / 2)));
    const auto one = judgedSeries(single({10}), question);
    CHECK(one->basis == SpreadBasis::Pooled);
    CHECK(one->mean.within == Approx(2.262 * 0.5));
    question.earlier.reset();
    question.poolAssumed = true;
    const auto withAssumed = judgedSeries(single({10, 11}), question);
    CHECK(withAssumed->basis == SpreadBasis::Pooled);
    CHECK(withAssumed->statistics.freedom == 9);
    // One reading has nothing to pool the assumed spread with.
    CHECK(judgedSeries(single({10}), question)->basis == SpreadBasis::Assumed);
}

TEST_CASE("an earlier series is pooled by its own readings, two or more", "[weighing]") {
    // By hand: s^2 = (0.5^2 + 0.5^2)/1 of 10 and 11; one reading shows none.
    const auto two = ownSpread(judgedSeries(single({10, 11}), asked())->statistics);
    REQUIRE(two);
    CHECK(two->spread == Approx(std::sqrt(0.5)));
    CHECK(two->freedom == 1);
    CHECK_FALSE(ownSpread(judgedSeries(single({10}), asked())->statistics));
    CHECK_FALSE(ownSpread(judgedRatios({{200, 160, 0}}, asked())->statistics));
    // Ratio 300/400; residuals 165 - 150 = 15 and 135 - 150 = -15; s_e = sqrt(450) of 200 g.
    const auto ratio = ownSpread(judgedRatios({{200, 165, 0}, {200, 135, 0}}, asked())->statistics);
    REQUIRE(ratio);
    CHECK(ratio->spread == Approx(std::sqrt(450.0) / 200));
    CHECK(ratio->freedom == 1);
}

TEST_CASE("ratios are pooled as shares of the mean lot", "[weighing]") {
    const std::vector<RatioReading> pairs{{200, 165, 0}, {200, 135, 0}};
    SeriesQuestion question = asked();
    question.earlier = EarlierSpread{{0.03, 4}, "fennel, 2025", 5};
    const auto earlier = judgedRatios(pairs, question);
    // By hand: own share^2 = 450/200^2 = 0.01125; (4 x 0.0009 + 1 x 0.01125)/5 = 0.00297.
    CHECK(earlier->basis == SpreadBasis::Pooled);
    CHECK(earlier->statistics.residualSpread == Approx(200 * std::sqrt(0.00297)));
    CHECK(earlier->statistics.freedom == 5);
    // t(0.975; 5) = 2.571; u(r) = share / sqrt(2), of one more lot sqrt(3) of that.
    CHECK(earlier->ratio.value == 0.75);
    CHECK(earlier->ratio.within == Approx(2.571 * std::sqrt(0.00297 / 2)).epsilon(1e-3));
    CHECK(earlier->next->within == Approx(2.571 * std::sqrt(0.00297 * 1.5)).epsilon(1e-3));
    question.earlier.reset();
    question.poolAssumed = true;
    // The lost quarter varies by 14 %: (8 x 0.035^2 + 0.01125)/9 = 0.021050/9.
    const auto assumed = judgedRatios(pairs, question);
    CHECK(assumed->basis == SpreadBasis::Pooled);
    CHECK(assumed->statistics.freedom == 9);
    CHECK(assumed->statistics.residualSpread == Approx(200 * std::sqrt(0.02105 / 9)));
    CHECK(judgedRatios({{200, 160, 0}}, question)->basis == SpreadBasis::Assumed);
}

TEST_CASE("an earlier spread stands for the one that a single ratio lacks, above its rounding",
          "[weighing]") {
    SeriesQuestion question = asked();
    question.earlier = EarlierSpread{{0.03, 4}, "fennel, 2025", 5};
    const auto one = judgedRatios({{200, 160, 0}}, question);
    CHECK(one->basis == SpreadBasis::Pooled);
    CHECK(one->statistics.residualSpread == Approx(6));
    CHECK(one->statistics.freedom == 4);
    // t(0.975; 4) = 2.776.
    REQUIRE(one->next);
    CHECK(one->next->within == Approx(2.776 * 0.03 * std::sqrt(2.0)).epsilon(1e-3));
    question.earlier->known.spread = 1e-6;
    CHECK(judgedRatios({{200, 160, 0.5}}, question)->statistics.residualSpread == 0.5);
}

TEST_CASE("a pooled series is held against the table by its own spread", "[weighing]") {
    SeriesQuestion question = asked();
    question.published = PublishedMean{"usda-sr 28 09160", 44, 12, 11.031};
    const auto own = judgedSeries(single({30, 33, 29, 34}), question);
    question.poolAssumed = true;
    const auto pooledToo = judgedSeries(single({30, 33, 29, 34}), question);
    CHECK(own->against->verdict == AgainstTable::Differs);
    CHECK(pooledToo->against->t == own->against->t);
    CHECK(pooledToo->against->freedom == own->against->freedom);
}

TEST_CASE("it is said how many more weighings are enough, or that none are", "[weighing]") {
    SeriesQuestion question = asked();
    question.others = 36;
    question.wanted = 5;
    const auto enough = judgedSeries(single(kPrawns), question);
    REQUIRE(enough->more);
    CHECK(*enough->more > 0);
    CHECK_FALSE(enough->noneSuffices);
    // Weighed as promised, with the same spread, they are within it.
    PieceStatistics later = enough->statistics;
    later.pieces += *enough->more;
    later.freedom += *enough->more;
    CHECK(halfWidthAfter(later, 36, 0, studentLaw().coverage) <= 5);
    question.wanted = 7.1;
    CHECK(judgedSeries(single(kPrawns), question)->more == 0);
    // 1.96 x 6 x 0.172 g = 2.03 g.
    question.wanted = 2;
    const auto never = judgedSeries(single(kPrawns), question);
    CHECK_FALSE(never->more);
    CHECK(never->noneSuffices);
    // A hair above the floor: some weighings would do, and nobody makes so many.
    question.wanted = never->floorWithin * 1.0001;
    const auto hardly = judgedSeries(single(kPrawns), question);
    CHECK_FALSE(hardly->more);
    CHECK_FALSE(hardly->noneSuffices);
}

TEST_CASE("an assumed spread has a wider floor", "[weighing]") {
    SeriesQuestion question = asked();
    question.others = 36;
    question.wanted = 2.306 * 1.4 * 6 * 0.99;
    CHECK(judgedSeries(single({10}), question)->noneSuffices);
    question.wanted = 2.306 * 1.4 * 6 * 1.05;
    const auto report = judgedSeries(single({10}), question);
    CHECK(report->more);
    CHECK_FALSE(report->noneSuffices);
}

TEST_CASE("the report asks about an odd piece and tells of a drift", "[weighing]") {
    const auto odd = judgedSeries(single({10, 10.1, 9.9, 10, 10.2, 9.8, 10, 14}), asked());
    CHECK(odd->outlier == 7U);
    const auto drifting = judgedSeries(single({14, 13.1, 12.1, 11, 10}), asked());
    CHECK(drifting->drift->significant);
    CHECK_FALSE(drifting->outlier);
}

TEST_CASE("a ratio series gives the share of the mean and of one more lot", "[weighing]") {
    const auto report = judgedRatios({{200, 160, 0}, {300, 246, 0}, {100, 82, 0}}, asked());
    REQUIRE(report);
    const double u = report->statistics.ratioUncertainty();
    CHECK(report->basis == SpreadBasis::FewOwn);
    CHECK(report->ratio.value == Approx(488.0 / 600));
    CHECK(report->ratio.within == Approx(4.303 * u));
    REQUIRE(report->next);
    // s_e / x for the lot itself and u(r) for the ratio.
    CHECK(report->next->within ==
          Approx(4.303 * std::hypot(report->statistics.residualSpread / 200, u)));
    const auto one = judgedRatios({{200, 160, 0}}, asked());
    CHECK(one->basis == SpreadBasis::Assumed);
    CHECK_FALSE(one->next);
    CHECK(judgedRatios({}, asked()).error().code == ErrorCode::SeriesEmpty);
    CHECK(judgedRatios({{0, 0, 0}}, asked()).error().code == ErrorCode::NothingWeighed);
}
