#pragma once

#include <vector>

#include "app/path/figure_plot.h"
#include "app/theme/palette.h"

#include <QtCharts/QChart>

namespace nettare {

/// Bars from the left, the first at the top, each with its name and its text; `axis` says what the
/// scale below counts.
[[nodiscard]] QChart* barChart(const std::vector<PlotBar>& bars, const QString& axis, Shade shade);

/// "prawns: 60 kcal; olive oil: 58 kcal".
[[nodiscard]] QString spokenBars(const std::vector<PlotBar>& bars);

}  // namespace nettare
