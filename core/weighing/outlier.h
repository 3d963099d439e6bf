#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/weighing/series.h"
#include "core/weighing/student_law.h"

namespace nettare {

/// The reading to be asked about, by Grubbs' test of sqrt(k) (w/k - m), which scatters alike for
/// any number of pieces k. Only from seven readings on, and never one that its rounding explains.
[[nodiscard]] std::optional<std::size_t> oddReading(const std::vector<SeriesReading>& readings,
                                                    const StudentLaw& student);

/// The same of the residuals y - r x.
[[nodiscard]] std::optional<std::size_t> oddReading(const std::vector<RatioReading>& readings,
                                                    const StudentLaw& student);

}  // namespace nettare
