#pragma once

#include "app/bench/series_plot.h"
#include "app/theme/palette.h"

#include <QtCharts/QChart>

namespace nettare {

/// A series drawn: readings, above them the mean with its 95 % interval as a bar, and what a table
/// says as an outlined diamond, each named at the left. The caller owns it.
[[nodiscard]] QChart* seriesChart(const SeriesPlot& plot, Shade shade);

/// How many pixels high it wants to be.
[[nodiscard]] int seriesChartHeight(const SeriesPlot& plot);

}  // namespace nettare
