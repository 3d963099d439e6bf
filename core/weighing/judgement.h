#pragma once

#include <optional>
#include <string>

#include "core/weighing/series.h"
#include "core/weighing/student_law.h"

namespace nettare {

/// A spread with the freedom that it is known by.
struct KnownSpread {
    double spread = 0;
    double freedom = 0;
};

/// The spread of an earlier series, by its own readings alone.
struct EarlierSpread {
    KnownSpread known;  ///< grams; of ratios a share of what went in, as ownSpread() has it
    std::string name;   ///< as sentences call the series
    int readings = 0;   ///< two or more
};

/// What a series knows of its spread by its own readings: s in grams, of a ratio s_e as a share of
/// the mean lot. Nothing with one reading, which shows none.
[[nodiscard]] std::optional<KnownSpread> ownSpread(const PieceStatistics& series);
[[nodiscard]] std::optional<KnownSpread> ownSpread(const RatioStatistics& series);

/// The assumed spread in the place of an earlier one, in the same terms; of a ratio that of the
/// share that is lost or gained.
[[nodiscard]] KnownSpread assumedBeside(const PieceStatistics& series, AssumedSpread assumed);
[[nodiscard]] KnownSpread assumedBeside(const RatioStatistics& series, AssumedSpread assumed);

/// An earlier or assumed spread and that of a series together:
/// s^2 = (nu0 s0^2 + nu s^2) / (nu0 + nu), freedom nu0 + nu.
[[nodiscard]] KnownSpread pooled(KnownSpread earlier, KnownSpread own);

/// A series of pieces with an earlier spread beside its own; that of one reading, which is assumed,
/// gives way to the earlier one. Never below the rounding of one reading per piece.
[[nodiscard]] PieceStatistics pooledWith(const PieceStatistics& series, KnownSpread earlier);
/// The same of ratios: shares of the mean lot are pooled, and s_e is never below the rounding of
/// one pair.
[[nodiscard]] RatioStatistics pooledWith(const RatioStatistics& series, KnownSpread earlier);

/// 95 % half-width of the mean of single pieces: t s / sqrt(n).
[[nodiscard]] double meanHalfWidth(const PieceStatistics& series, const CoverageOf& coverage);

/// 95 % half-width for one more single piece: t s sqrt(1 + 1/n).
[[nodiscard]] double nextPieceHalfWidth(const PieceStatistics& series, const CoverageOf& coverage);

/// 95 % half-width of the total of N other pieces after `more` single pieces were weighed as well,
/// with the spread that the series has now.
[[nodiscard]] double halfWidthAfter(const PieceStatistics& series, double count, int more,
                                    const CoverageOf& coverage);

/// 95 % half-width of N other pieces that no number of weighings goes below, since the scatter of
/// the pieces stays: t sqrt(N) s, with the t of unlimited freedom unless the spread is assumed.
[[nodiscard]] double floorHalfWidth(const PieceStatistics& series, double count,
                                    const CoverageOf& coverage);

/// How many more single pieces bring the half-width of N other pieces to `wanted`; nothing where
/// none does, or where it takes more than a thousand.
[[nodiscard]] std::optional<int> weighingsUntil(const PieceStatistics& series, double count,
                                                double wanted, const CoverageOf& coverage);

/// What the rounding of the scale alone means for a net under 20 steps: its standard uncertainty
/// from two indications, 0.41 d, as a share of the net; nothing from 20 d on.
[[nodiscard]] std::optional<double> coarseShare(double net, double readability);

}  // namespace nettare
