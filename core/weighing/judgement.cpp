#include "core/weighing/judgement.h"

#include <cmath>

namespace nettare {

KnownSpread pooled(KnownSpread earlier, KnownSpread own) {
    const double freedom = earlier.freedom + own.freedom;
    const double squares =
        earlier.freedom * earlier.spread * earlier.spread + own.freedom * own.spread * own.spread;
    return {std::sqrt(squares / freedom), freedom};
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

std::optional<int> weighingsUntil(const PieceStatistics& series, double count, double wanted,
                                  const CoverageOf& coverage) {
    for (int more = 0; more <= 1000; ++more)
        if (halfWidthAfter(series, count, more, coverage) <= wanted) return more;
    return std::nullopt;
}

AgainstTable againstTable(const PieceStatistics& series, double tableMean,
                          std::optional<double> tableDeviation, int tableCount,
                          const CoverageOf& coverage) {
    if (series.spreadAssumed || !tableDeviation || tableCount < 2)
        return AgainstTable::CannotBeTold;
    const double own = series.spread * series.spread / series.pieces;
    const double theirs = *tableDeviation * *tableDeviation / tableCount;
    const double sum = own + theirs;
    // Neither side scatters: there is no t, and the means themselves decide.
    if (sum == 0) return series.mean == tableMean ? AgainstTable::Agrees : AgainstTable::Differs;
    // Welch-Satterthwaite (JCGM 100:2008, G.4.1).
    const double freedom =
        sum * sum / (own * own / series.freedom + theirs * theirs / (tableCount - 1));
    const double t = std::fabs(series.mean - tableMean) / std::sqrt(sum);
    return t > coverage(freedom) ? AgainstTable::Differs : AgainstTable::Agrees;
}

std::optional<double> coarseShare(double net, double readability) {
    if (net >= 20 * readability || net <= 0) return std::nullopt;
    return std::sqrt(2.0 / 12) * readability / net;
}

}  // namespace nettare
