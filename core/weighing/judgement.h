#pragma once

#include <functional>
#include <optional>

#include "core/weighing/series.h"

namespace nettare {

/// t(0.975; freedom); handed in, so that this folder needs no quantiles of its own.
using CoverageOf = std::function<double(double freedom)>;

/// A spread with the freedom that it is known by.
struct KnownSpread {
    double spread = 0;
    double freedom = 0;
};

/// An earlier or assumed spread and that of a series together:
/// s^2 = (nu0 s0^2 + nu s^2) / (nu0 + nu), freedom nu0 + nu.
[[nodiscard]] KnownSpread pooled(KnownSpread earlier, KnownSpread own);

/// 95 % half-width for one more single piece: t s sqrt(1 + 1/n).
[[nodiscard]] double nextPieceHalfWidth(const PieceStatistics& series, const CoverageOf& coverage);

/// 95 % half-width of the total of N other pieces after `more` single pieces were weighed as well,
/// with the spread that the series has now.
[[nodiscard]] double halfWidthAfter(const PieceStatistics& series, double count, int more,
                                    const CoverageOf& coverage);

/// How many more single pieces bring the half-width of N other pieces to `wanted`; nothing where
/// none does, since the scatter of the pieces (N s^2) stays, or where it takes more than a
/// thousand.
[[nodiscard]] std::optional<int> weighingsUntil(const PieceStatistics& series, double count,
                                                double wanted, const CoverageOf& coverage);

/// Whether a series differs from a published mean.
enum class AgainstTable { Agrees, Differs, CannotBeTold };

/// Welch's t test, two-sided 5 %, of a series of single readings against a published mean with its
/// standard deviation and number; CannotBeTold where either side has no spread of its own.
[[nodiscard]] AgainstTable againstTable(const PieceStatistics& series, double tableMean,
                                        std::optional<double> tableDeviation, int tableCount,
                                        const CoverageOf& coverage);

/// What the rounding of the scale alone means for a net under 20 steps: its standard uncertainty
/// from two indications, 0.41 d, as a share of the net; nothing from 20 d on.
[[nodiscard]] std::optional<double> coarseShare(double net, double readability);

}  // namespace nettare
