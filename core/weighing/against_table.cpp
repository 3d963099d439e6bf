#include "core/weighing/against_table.h"

#include <cmath>
#include <limits>

namespace nettare {

namespace {

/// The square of a mean's standard uncertainty, with its freedom.
struct MeanVariance {
    double square = 0;
    double freedom = std::numeric_limits<double>::infinity();
};

bool hasSpread(const PublishedMean& published) {
    return published.deviation && published.count >= 2;
}

MeanVariance ofPublished(const PublishedMean& published) {
    if (!hasSpread(published)) return {};
    const double s = *published.deviation;
    return {s * s / published.count, static_cast<double>(published.count - 1)};
}

/// Of the series after `more` single readings of the same spread: every reading beside the first
/// is one degree of freedom.
MeanVariance afterMore(const PieceStatistics& series, int more) {
    return {series.spread * series.spread / (series.pieces + more),
            static_cast<double>(series.readings - 1 + more)};
}

/// Welch-Satterthwaite (JCGM 100:2008, G.4.1).
MeanVariance sumOf(const MeanVariance& own, const MeanVariance& theirs) {
    const double sum = own.square + theirs.square;
    return {sum, sum * sum /
                     (own.square * own.square / own.freedom +
                      theirs.square * theirs.square / theirs.freedom)};
}

bool wouldTell(double difference, const MeanVariance& sum, const CoverageOf& coverage) {
    return std::fabs(difference) > coverage(sum.freedom) * std::sqrt(sum.square);
}

std::optional<int> readingsToTell(const PieceStatistics& series, const PublishedMean& published,
                                  const CoverageOf& coverage) {
    const double difference = series.mean - published.mean;
    if (difference == 0 || series.spread == 0) return std::nullopt;
    const MeanVariance theirs = ofPublished(published);
    for (int more = series.readings == 1 ? 1 : 0; more <= kMostMoreReadings; ++more)
        if (wouldTell(difference, sumOf(afterMore(series, more), theirs), coverage)) return more;
    return std::nullopt;
}

}  // namespace

AgainstPublished againstTable(const PieceStatistics& series, const PublishedMean& published,
                              const CoverageOf& coverage) {
    AgainstPublished result;
    result.difference = series.mean - published.mean;
    result.publishedExact = !hasSpread(published);
    if (!series.spreadAssumed && !result.publishedExact) {
        const MeanVariance own{series.spread * series.spread / series.pieces, series.freedom};
        const MeanVariance sum = sumOf(own, ofPublished(published));
        if (sum.square > 0) {
            result.freedom = sum.freedom;
            result.t = result.difference / std::sqrt(sum.square);
        }
        // Neither side scatters: there is no t, and the means themselves decide.
        const bool differs =
            sum.square > 0 ? wouldTell(result.difference, sum, coverage) : result.difference != 0;
        result.verdict = differs ? AgainstTable::Differs : AgainstTable::Agrees;
        if (differs) return result;
    }
    result.moreToTell = readingsToTell(series, published, coverage);
    return result;
}

}  // namespace nettare
