#include "core/weighing/judgement.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace nettare {

std::optional<KnownSpread> ownSpread(const PieceStatistics& series) {
    if (series.readings < 2) return std::nullopt;
    return KnownSpread{series.spread, series.freedom};
}

std::optional<KnownSpread> ownSpread(const RatioStatistics& series) {
    if (series.readings < 2) return std::nullopt;
    return KnownSpread{series.residualSpread / series.meanBefore, series.freedom};
}

KnownSpread assumedBeside(const PieceStatistics& series, AssumedSpread assumed) {
    return {assumed.relative * series.mean, assumed.freedom};
}

KnownSpread assumedBeside(const RatioStatistics& series, AssumedSpread assumed) {
    return {assumed.relative * std::fabs(1 - series.ratio), assumed.freedom};
}

KnownSpread pooled(KnownSpread earlier, KnownSpread own) {
    const double freedom = earlier.freedom + own.freedom;
    const double squares =
        earlier.freedom * earlier.spread * earlier.spread + own.freedom * own.spread * own.spread;
    return {std::sqrt(squares / freedom), freedom};
}

PieceStatistics pooledWith(const PieceStatistics& series, KnownSpread earlier) {
    const KnownSpread both =
        series.spreadAssumed ? earlier : pooled(earlier, {series.spread, series.freedom});
    PieceStatistics result = series;
    result.spreadAssumed = false;
    result.spread = std::max(both.spread, series.roundingPerPiece);
    result.freedom = both.freedom;
    return result;
}

RatioStatistics pooledWith(const RatioStatistics& series, KnownSpread earlier) {
    const auto own = series.spreadAssumed ? std::nullopt : ownSpread(series);
    const KnownSpread both = own ? pooled(earlier, *own) : earlier;
    RatioStatistics result = series;
    result.spreadAssumed = false;
    result.residualSpread = std::max(both.spread * series.meanBefore, series.roundingGrams);
    result.freedom = both.freedom;
    return result;
}

double meanHalfWidth(const PieceStatistics& series, const CoverageOf& coverage) {
    return coverage(series.freedom) * series.spread / std::sqrt(series.pieces);
}

double nextPieceHalfWidth(const PieceStatistics& series, const CoverageOf& coverage) {
    return coverage(series.freedom) * series.spread * std::sqrt(1 + 1.0 / series.pieces);
}

double halfWidthAfter(const PieceStatistics& series, double count, int more,
                      const CoverageOf& coverage) {
    PieceStatistics later = series;
    later.pieces += more;
    // An assumed spread stays as little known as it was, however many pieces are added.
    later.freedom = series.spreadAssumed ? series.freedom : series.freedom + more;
    const TotalVariance variance = varianceOfOthers(later, count);
    return coverage(later.freedom) * std::sqrt(variance.ofMean + variance.ofPieces);
}

double floorHalfWidth(const PieceStatistics& series, double count, const CoverageOf& coverage) {
    const double freedom =
        series.spreadAssumed ? series.freedom : std::numeric_limits<double>::infinity();
    return coverage(freedom) * std::sqrt(count) * series.spread;
}

std::optional<int> weighingsUntil(const PieceStatistics& series, double count, double wanted,
                                  const CoverageOf& coverage) {
    for (int more = 0; more <= 1000; ++more)
        if (halfWidthAfter(series, count, more, coverage) <= wanted) return more;
    return std::nullopt;
}

std::optional<double> coarseShare(double net, double readability) {
    if (net >= 20 * readability || net <= 0) return std::nullopt;
    return std::sqrt(2.0 / 12) * readability / net;
}

}  // namespace nettare
