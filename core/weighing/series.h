#pragma once

#include <optional>
#include <vector>

#include "core/support/result.h"

namespace nettare {

/// What a series measures.
enum class SeriesKind {
    PerPiece,    ///< grams per piece, readings of one or several pieces
    PerMeasure,  ///< grams per household measure, one measure a reading
    Ratio,       ///< after / before: edible / bought, cooked / raw, drained / total
};

/// So many conditions, such as "size 16/20", a reading or a series has at most.
inline constexpr std::size_t kMostTags = 8;

/// One reading of a series: total grams of `pieces` pieces, with the standard uncertainty of its
/// net from rounding.
struct SeriesReading {
    double grams = 0;
    int pieces = 1;
    double roundingGrams = 0;
};

/// Mean and spread of single pieces. Formulas: arithmetic of the project, section "Series"; m is
/// the weighted mean, s^2 = sum k (w/k - m)^2 / (g - 1).
struct PieceStatistics {
    int readings = 0;             ///< g
    int pieces = 0;               ///< n, the sum of k
    double mean = 0;              ///< grams per piece
    double spread = 0;            ///< s, grams; never below the rounding of one reading per piece
    double freedom = 0;           ///< g - 1, or that of the assumed spread
    bool spreadAssumed = false;   ///< one reading only: s is AssumedSpread::relative x mean
    double roundingPerPiece = 0;  ///< largest rounding of one reading per piece, grams
    double lowest = 0, highest = 0;  ///< smallest and largest mean of one reading
};

/// An assumed spread where one reading cannot tell: relative standard deviation and the degrees of
/// freedom that say how far it is trusted (JCGM 100:2008, G.4.2).
struct AssumedSpread {
    double relative = 0;
    double freedom = 0;
};

/// Statistics of piece or measure readings. Fails: SeriesEmpty.
[[nodiscard]] Result<PieceStatistics> pieceStatistics(const std::vector<SeriesReading>& readings,
                                                      AssumedSpread assumed);

/// Variance of the total weight of N pieces, in g^2, split into the part of the series' mean and
/// the fresh scatter of the pieces. Other pieces: N^2 s^2/n and N s^2. The n weighed pieces among
/// the N: N (N - n) s^2 / n, all fresh; N >= n.
struct TotalVariance {
    double ofMean = 0;
    double ofPieces = 0;
};
[[nodiscard]] TotalVariance varianceOfOthers(const PieceStatistics& series, double count);
[[nodiscard]] TotalVariance varianceAmong(const PieceStatistics& series, double count);

/// One pair of a ratio series: grams before and after, with their rounding.
struct RatioReading {
    double before = 0;
    double after = 0;
    double roundingGrams = 0;  ///< of the difference after - r x before
};

/// Ratio of sums, with the residual spread: s_e^2 = sum (y - r x)^2 / (g - 1) and
/// u(r) = s_e / (sqrt(g) x_mean), the usual ratio estimator (Cochran, Sampling Techniques, ch. 6,
/// from memory).
struct RatioStatistics {
    int readings = 0;
    double ratio = 0;
    double residualSpread = 0;  ///< s_e, grams, for a lot of `meanBefore`
    double meanBefore = 0;      ///< grams
    double freedom = 0;
    bool spreadAssumed = false;
    double roundingGrams = 0;  ///< largest rounding of one pair's residual, grams
    [[nodiscard]] double ratioUncertainty() const;
};

/// Fails: SeriesEmpty; NothingWeighed where no grams before are more than zero. With one pair the
/// lost (or gained) share is assumed to vary by the relative spread.
[[nodiscard]] Result<RatioStatistics> ratioStatistics(const std::vector<RatioReading>& readings,
                                                      AssumedSpread assumed);

/// Mean and sample standard deviation by a two-pass sum about the mean, which keeps its digits
/// where one pass loses them (checked against NIST StRD). Needs two values for a spread.
struct MeanAndDeviation {
    double mean = 0;
    std::optional<double> deviation;
};
[[nodiscard]] MeanAndDeviation meanAndDeviation(const std::vector<double>& values);

/// The single value that lies furthest out by Grubbs' test, two-sided 5 %, for seven or more
/// readings; nothing otherwise. `criticalT` is Student's t(1 - 0.05/(2 g); g - 2).
[[nodiscard]] std::optional<std::size_t> grubbsOutlier(const std::vector<double>& values,
                                                       double criticalT);

}  // namespace nettare
