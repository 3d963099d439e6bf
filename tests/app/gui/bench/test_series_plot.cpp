#include "app/bench/series_plot.h"
#include "app/gui/bench/sample_series.h"
#include "app/gui/support/gui.h"

#include <algorithm>

namespace nettare {

namespace {

std::vector<double> levelsOf(const SeriesPlot& plot) {
    std::vector<double> levels;
    for (const PlotDot& dot : plot.dots) levels.push_back(dot.level);
    return levels;
}

}  // namespace

TEST_CASE("prawns that weigh the same are dots on top of one another") {
    const SeriesPlot plot =
        seriesPlotOf(prawnSeries({"9.8", "9.6", "9.8", "10.1", "9.7", "9.8"}), PlotOrder::ByWeight);
    REQUIRE(plot.dots.size() == 6);
    CHECK(plot.dots[0].value == Approx(9.6));
    CHECK(levelsOf(plot) == std::vector<double>{0, 0, 0, 1, 2, 0});
    CHECK(plot.rows == 3);
    CHECK(plot.low < 9.6);
    CHECK(plot.high > 10.1);
}

TEST_CASE("no dot of a plot lies on another") {
    const std::vector<double> sorted{0, 0.4, 0.9, 1, 1, 1.3, 5};
    const auto rows = stackedRows(sorted, 1);
    for (std::size_t i = 0; i < sorted.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (rows[i] == rows[j]) CHECK(sorted[i] - sorted[j] >= 1);
    CHECK(rows == std::vector<int>{0, 1, 2, 0, 3, 4, 0});
}

TEST_CASE("several prawns weighed together are one dot at the weight of each") {
    BenchSeries series = prawnSeries({"9.8"});
    series.readings.push_back(prawnReading("58.9", 6));
    const SeriesPlot plot = seriesPlotOf(series, PlotOrder::InTime);
    REQUIRE(plot.dots.size() == 2);
    CHECK(plot.dots[1].value == Approx(58.9 / 6));
    CHECK(plot.dots[1].level == 2);
}

TEST_CASE("what was left out stays in the plot, crossed, and moves no end where it is far off") {
    BenchSeries series = prawnSeries({"9.8", "9.6", "9.7", "10.1"});
    const double high = seriesPlotOf(series, PlotOrder::ByWeight).high;
    LedgerReading odd = prawnReading("10.2");
    odd.leftOut = true;
    LedgerReading slip = prawnReading("98.2");
    slip.leftOut = true;
    series.readings.push_back(odd);
    series.readings.push_back(slip);
    const SeriesPlot plot = seriesPlotOf(series, PlotOrder::ByWeight);
    CHECK(plot.counted == 4);
    CHECK(plot.leftOut == 2);
    CHECK(std::ranges::count(plot.dots, DotKind::LeftOut, &PlotDot::kind) == 1);
    CHECK(plot.beyond == std::vector<double>{98.2});
    CHECK(plot.high < high + 1);
    CHECK_THAT(plotNote(plot).toStdString(),
               Catch::Contains("crossed: left out") && Catch::Contains("98.2"));
    CHECK_THAT(spokenPlot(plot).toStdString(), Catch::Contains("2 left out"));
}

TEST_CASE("what was taken back is not in the plot") {
    BenchSeries series = prawnSeries({"9.8", "9.6"});
    series.readings[1].supersededBy = "another";
    CHECK(seriesPlotOf(series, PlotOrder::ByWeight).dots.size() == 1);
}

TEST_CASE("a reading of a scale in doubt has a shape of its own") {
    BenchSeries series = prawnSeries({"9.8", "9.6"});
    series.readings[1].suspect = true;
    const SeriesPlot plot = seriesPlotOf(series, PlotOrder::InTime);
    CHECK(plot.dots[1].kind == DotKind::Doubted);
    CHECK_THAT(plotNote(plot).toStdString(), Catch::Contains("triangle"));
}

TEST_CASE("the plot of a series says its mean, its interval and what the table says") {
    BenchSeries series = prawnSeries({"9.8", "9.6", "9.8", "10.1", "9.7", "9.9"});
    series.published = PublishedMean{"a table, 1 prawn", 10.6, 0, {}};
    const SeriesPlot plot = seriesPlotOf(series, PlotOrder::ByWeight);
    CHECK(plot.high > 10.6);
    CHECK(spokenPlot(plot) == QStringLiteral("6 readings; mean 9.82 g, in 95 % from 9.64 g to "
                                             "10.00 g; a table, 1 prawn: 10.60 g"));
}

TEST_CASE("of many readings the plot shows bins, or means in time, and never too many dots") {
    std::vector<const char*> grams;
    grams.reserve(10'000);
    for (int i = 0; i < 10'000; ++i) grams.push_back(i % 3 == 0 ? "9.7" : "9.9");
    const BenchSeries series = prawnSeries(grams);
    const SeriesPlot byWeight = seriesPlotOf(series, PlotOrder::ByWeight);
    CHECK(byWeight.dots.empty());
    CHECK(std::ranges::max(byWeight.bins) == 1);
    const SeriesPlot inTime = seriesPlotOf(series, PlotOrder::InTime);
    CHECK(inTime.readingsADot == 50);
    CHECK(inTime.dots.size() == kMostDots);
    CHECK(inTime.dots[0].value == Approx((17 * 9.7 + 33 * 9.9) / 50));
}

TEST_CASE("a ratio series is plotted as its shares, and said in percent") {
    BenchSeries series;
    series.key = {"fennel", SeriesKind::Ratio, "edible / bought"};
    LedgerReading reading = prawnReading("382.0");
    reading.before = Decimal{4860, -1};
    series.readings.push_back(reading);
    reading.before.reset();
    series.readings.push_back(reading);
    const SeriesPlot plot = seriesPlotOf(series, PlotOrder::ByWeight);
    REQUIRE(plot.dots.size() == 1);
    CHECK(plot.dots[0].value == Approx(382.0 / 486.0));
    CHECK(plotNumber(plot, plot.dots[0].value) == QStringLiteral("78.6 %"));
}

}  // namespace nettare
