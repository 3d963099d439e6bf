#pragma once

#include "app/path/figure_plot.h"
#include "app/theme/palette.h"

#include <QtCharts/QChart>

namespace nettare {

/// The interval as a bar with the figure on it, the simulated one above it with its trials, and
/// ceiling and floor as upright lines.
[[nodiscard]] QChart* intervalChart(const FigurePlot& plot, Shade shade);

/// The same in words: "139 to 149 kcal; simulated 139 to 149 kcal; ceiling 150 kcal".
[[nodiscard]] QString spokenInterval(const FigurePlot& plot);

}  // namespace nettare
