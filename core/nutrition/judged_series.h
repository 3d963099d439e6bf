#pragma once

#include <vector>

#include "core/weighing/series_report.h"

namespace nettare {

/// Student's t of the project, for what core/weighing judges.
[[nodiscard]] const StudentLaw& studentLaw();

/// seriesReport() and ratioReport() with the project's own t.
[[nodiscard]] Result<SeriesReport> judgedSeries(const std::vector<SeriesReading>& readings,
                                                const SeriesQuestion& question);
[[nodiscard]] Result<RatioReport> judgedRatios(const std::vector<RatioReading>& readings,
                                               const SeriesQuestion& question);

}  // namespace nettare
