#pragma once

#include <optional>
#include <vector>

#include "core/weighing/series.h"
#include "core/weighing/student_law.h"

namespace nettare {

/// A drift over time: the slope of single means over the order of readings, by least squares
/// weighted by their pieces.
struct Drift {
    double perReading = 0;      ///< grams
    double t = 0, freedom = 0;  ///< t is 0 where nothing scatters about the line
    bool significant = false;   ///< two-sided 5 %
};

/// Of `readings` in the order they were taken; nothing of fewer than four. The readings never
/// scatter less about the line than their rounding does.
[[nodiscard]] std::optional<Drift> driftOf(const std::vector<SeriesReading>& readings,
                                           const CoverageOf& coverage);

}  // namespace nettare
