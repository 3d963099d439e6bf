#pragma once

#include <optional>

#include "core/nutrition/linear_form.h"

namespace nettare {

/// Net grams of one reading: gross minus tare, each with the rounding of its own indication
/// (d/sqrt(12)), a known tare with that of its vessel, and the scale's calibration in common.
/// Readings that share an indication correlate by themselves.
[[nodiscard]] LinearForm weighed(const Dossier& dossier, std::size_t reading);

/// The sum of several readings; zero for none.
[[nodiscard]] LinearForm weighed(const Dossier& dossier, const std::vector<std::size_t>& readings);

/// The same sum with only what its readings have in common: calibration, a vessel's tare, an empty
/// scale read once for several. The rounding of each shows in the scatter of a series, these do
/// not.
[[nodiscard]] LinearForm commonPart(const Dossier& dossier,
                                    const std::vector<std::size_t>& readings);

/// What was on the scale when the gross of a reading was taken.
[[nodiscard]] WeighedState stateOf(const Dossier& dossier, std::size_t reading);

/// Relative rounding of a reading whose net is under 20 steps of its scale; nothing for the others.
[[nodiscard]] std::optional<double> coarseShareOf(const Dossier& dossier, std::size_t reading);

/// Statistics of a series by its readings; the spread assumed where one reading cannot tell, and
/// pooled with an earlier or the assumed one where the series says so.
[[nodiscard]] Result<PieceStatistics> statisticsOf(const Dossier& dossier, const SeriesData& series,
                                                   const Assumptions& assumptions);
[[nodiscard]] Result<RatioStatistics> ratioOf(const Dossier& dossier, const SeriesData& series,
                                              const Assumptions& assumptions);

}  // namespace nettare
