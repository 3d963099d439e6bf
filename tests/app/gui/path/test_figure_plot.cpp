#include "app/gui/path/sample_path.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/path/bar_chart.h"
#include "app/path/figure_plot.h"
#include "app/path/interval_chart.h"
#include "app/path/share_bars.h"

namespace nettare {

namespace {

FigurePlot samplePlot(KitchenSession& kitchen, const PathStep& path) {
    return figurePlotOf({}, *kitchen.draft()->evaluation(), path, {}, nullptr);
}

double sumOf(const std::vector<PlotBar>& bars) {
    double sum = 0;
    for (const PlotBar& bar : bars) sum += bar.value;
    return sum;
}

}  // namespace

TEST_CASE("a printed number is read with its minus sign and its narrow spaces") {
    CHECK(printedNumber("300.4") == 300.4);
    CHECK(printedNumber("\u22127.4") == -7.4);
    CHECK(printedNumber("12\u202F345.5") == 12345.5);
    CHECK_FALSE(printedNumber(""));
    CHECK_FALSE(printedNumber("about 3"));
}

TEST_CASE("the bars of the lines add up to the figure") {
    const auto kitchen = sampleSession();
    const FigurePlot plot = samplePlot(*kitchen, samplePath(3));
    REQUIRE(plot.lines.size() == 3);
    CHECK(sumOf(plot.lines) == Approx(plot.value));
    CHECK_THAT(spokenBars(plot.lines).toStdString(), Catch::Contains(" kcal; "));
}

TEST_CASE("the bars of many lines end in one for the rest, and still add up") {
    const auto kitchen = sampleSession();
    const FigurePlot plot = samplePlot(*kitchen, samplePath(40));
    REQUIRE(plot.lines.size() == 12);
    CHECK_THAT(plot.lines.back().name.toStdString(), Catch::StartsWith("29 more line"));
    CHECK(sumOf(plot.lines) == Approx(plot.value));
}

TEST_CASE("the plot of an interval says both ends and the ceiling") {
    const auto kitchen = sampleSession();
    const FigurePlot plot = samplePlot(*kitchen, samplePath(3));
    REQUIRE(plot.ceiling);
    CHECK_THAT(spokenInterval(plot).toStdString(),
               Catch::Contains(" to ") && Catch::EndsWith("ceiling 150 kcal"));
}

TEST_CASE("a share is a whole percent, and a small one is not nothing") {
    CHECK(shareText(0.463) == QStringLiteral("46 %"));
    CHECK(shareText(0.004) == QStringLiteral("< 1 %"));
    CHECK(shareText(0) == QStringLiteral("0 %"));
}

}  // namespace nettare
