#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/judged_series.h"
#include "starter.h"

using namespace nettare;

namespace {

/// So many values whose mean and standard deviation are exactly these: pairs about the mean, and
/// the mean itself where the number is odd.
std::vector<SeriesReading> seriesOf(int count, double mean, double deviation) {
    const bool even = count % 2 == 0;
    const double off = even ? deviation * std::sqrt((count - 1.0) / count) : deviation;
    std::vector<SeriesReading> readings;
    if (!even) readings.push_back({mean, 1, 0});
    while (readings.size() < static_cast<std::size_t>(count)) {
        readings.push_back({mean - off, 1, 0});
        readings.push_back({mean + off, 1, 0});
    }
    return readings;
}

struct PublishedMeasure {
    std::string name;
    HouseholdMeasure measure;
};

/// The starter's measures that publish n and a standard deviation.
std::vector<PublishedMeasure> measuresWithSpread(const FoodTable& table) {
    std::vector<PublishedMeasure> found;
    for (const std::string& number : starterNumbers())
        for (const HouseholdMeasure& measure : foodIn(table, number).measures)
            if (measure.standardDeviation) found.push_back({number + " " + measure.unit, measure});
    return found;
}

}  // namespace

TEST_CASE("a series with the n, mean and s of a published measure gives them back", "[starter]") {
    // USDA SR28, WEIGHT: Num_Data_Pts and Std_Dev.
    const FoodTable table = openStarter();
    const std::vector<PublishedMeasure> measures = measuresWithSpread(table);
    CHECK(measures.size() == 217);
    int seriesChecked = 0;
    for (const PublishedMeasure& published : measures) {
        CAPTURE(published.name);
        const HouseholdMeasure& measure = published.measure;
        if (measure.n < 2) continue;  // one publishes no n
        ++seriesChecked;
        SeriesQuestion question;
        question.published =
            PublishedMean{published.name, measure.grams, measure.n, measure.standardDeviation};
        const auto report =
            judgedSeries(seriesOf(measure.n, measure.grams, *measure.standardDeviation), question);
        REQUIRE(report);
        CHECK(report->statistics.readings == measure.n);
        CHECK_THAT(report->mean.value, Catch::Matchers::WithinRel(measure.grams, 1e-12));
        CHECK_THAT(report->statistics.spread,
                   Catch::Matchers::WithinRel(*measure.standardDeviation, 1e-9));
        if (*measure.standardDeviation == 0) continue;
        // Against its own mean no difference shows, with the freedom of two equal sides.
        CHECK(report->against->verdict == AgainstTable::Agrees);
        CHECK(report->against->freedom == Approx(2.0 * (measure.n - 1)));
    }
    CHECK(seriesChecked == 216);
}

TEST_CASE("limes are held against the table's own lime", "[starter]") {
    const FoodTable table = openStarter();
    const auto measures = measuresWithSpread(table);
    const auto lime = std::find_if(measures.begin(), measures.end(), [](const auto& published) {
        return published.name.starts_with("09160 ") && published.measure.grams == 44;
    });
    REQUIRE(lime != measures.end());
    CHECK(lime->measure.n == 12);
    CHECK(lime->measure.standardDeviation == 11.031);
    SeriesQuestion question;
    question.assumed = {0.14, 8};
    question.published = PublishedMean{lime->name, 44, 12, lime->measure.standardDeviation};
    const auto four =
        judgedSeries({{30, 1, 0}, {33, 1, 0}, {29, 1, 0}, {34, 1, 0}}, question)->against;
    CHECK(four->verdict == AgainstTable::Differs);
    CHECK(four->t == Approx(-3.68).margin(0.005));
    CHECK(four->freedom == Approx(13.3).margin(0.05));
    const auto one = judgedSeries({{36, 1, 0}}, question)->against;
    CHECK(one->verdict == AgainstTable::CannotBeTold);
}
