#include "core/weighing/series.h"

#include <algorithm>
#include <cmath>

namespace nettare {

Result<PieceStatistics> pieceStatistics(const std::vector<SeriesReading>& readings,
                                        AssumedSpread assumed) {
    if (readings.empty()) return fail(ErrorCode::SeriesEmpty);
    PieceStatistics result;
    double total = 0;
    result.lowest = result.highest = readings.front().grams / readings.front().pieces;
    for (const SeriesReading& reading : readings) {
        total += reading.grams;
        result.pieces += reading.pieces;
        const double each = reading.grams / reading.pieces;
        result.lowest = std::min(result.lowest, each);
        result.highest = std::max(result.highest, each);
        result.roundingPerPiece =
            std::max(result.roundingPerPiece, reading.roundingGrams / reading.pieces);
    }
    result.readings = static_cast<int>(readings.size());
    result.mean = total / result.pieces;
    if (readings.size() == 1) {
        result.spreadAssumed = true;
        result.spread = assumed.relative * result.mean;
        result.freedom = assumed.freedom;
    } else {
        double squares = 0;
        for (const SeriesReading& reading : readings) {
            const double off = reading.grams / reading.pieces - result.mean;
            squares += reading.pieces * off * off;
        }
        result.freedom = static_cast<double>(readings.size() - 1);
        result.spread = std::sqrt(squares / result.freedom);
    }
    // Equal readings do not show that the pieces are equal, only that the scale cannot part them.
    result.spread = std::max(result.spread, result.roundingPerPiece);
    return result;
}

TotalVariance varianceOfOthers(const PieceStatistics& series, double count) {
    const double variance = series.spread * series.spread;
    return {count * count * variance / series.pieces, count * variance};
}

/// Only the N - n pieces that were not weighed are uncertain: the finite population correction of
/// sampling without return (Cochran, Sampling Techniques, ch. 2, from memory).
TotalVariance varianceAmong(const PieceStatistics& series, double count) {
    const double variance = series.spread * series.spread;
    return {0, count * (count - series.pieces) * variance / series.pieces};
}

double RatioStatistics::ratioUncertainty() const {
    return residualSpread / (std::sqrt(static_cast<double>(readings)) * meanBefore);
}

Result<RatioStatistics> ratioStatistics(const std::vector<RatioReading>& readings,
                                        AssumedSpread assumed) {
    if (readings.empty()) return fail(ErrorCode::SeriesEmpty);
    RatioStatistics result;
    double before = 0;
    double after = 0;
    for (const RatioReading& reading : readings) {
        before += reading.before;
        after += reading.after;
        result.roundingGrams = std::max(result.roundingGrams, reading.roundingGrams);
    }
    if (before <= 0) return fail(ErrorCode::NothingWeighed);
    result.readings = static_cast<int>(readings.size());
    result.ratio = after / before;
    result.meanBefore = before / result.readings;
    if (readings.size() == 1) {
        result.spreadAssumed = true;
        result.freedom = assumed.freedom;
        // What varies is the loss: one of 10 %, give or take a fifth, moves what is left by 2 % of
        // what was bought.
        result.residualSpread = assumed.relative * std::fabs(1 - result.ratio) * before;
    } else {
        double squares = 0;
        for (const RatioReading& reading : readings) {
            const double residual = reading.after - result.ratio * reading.before;
            squares += residual * residual;
        }
        result.freedom = static_cast<double>(readings.size() - 1);
        result.residualSpread = std::sqrt(squares / result.freedom);
    }
    result.residualSpread = std::max(result.residualSpread, result.roundingGrams);
    return result;
}

MeanAndDeviation meanAndDeviation(const std::vector<double>& values) {
    if (values.empty()) return {};
    const auto count = static_cast<double>(values.size());
    // Sums are taken about the first value, so that large common parts cancel exactly.
    double shifted = 0;
    for (const double value : values) shifted += value - values.front();
    const double offset = shifted / count;
    MeanAndDeviation result{values.front() + offset, {}};
    if (values.size() < 2) return result;
    double squares = 0;
    double rest = 0;
    for (const double value : values) {
        const double off = (value - values.front()) - offset;
        squares += off * off;
        rest += off;
    }
    // `rest` is zero but for rounding; taking it out repairs what the mean lost.
    result.deviation = std::sqrt((squares - rest * rest / count) / (count - 1));
    return result;
}

std::optional<std::size_t> grubbsOutlier(const std::vector<double>& values, double criticalT) {
    if (values.size() < 7) return std::nullopt;
    const MeanAndDeviation all = meanAndDeviation(values);
    if (!all.deviation || *all.deviation == 0) return std::nullopt;
    std::size_t furthest = 0;
    for (std::size_t i = 1; i < values.size(); ++i)
        if (std::fabs(values[i] - all.mean) > std::fabs(values[furthest] - all.mean)) furthest = i;
    const auto n = static_cast<double>(values.size());
    const double t2 = criticalT * criticalT;
    // Critical value: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1, from memory.
    const double critical = (n - 1) / std::sqrt(n) * std::sqrt(t2 / (n - 2 + t2));
    const double distance = std::fabs(values[furthest] - all.mean) / *all.deviation;
    return distance > critical ? std::optional{furthest} : std::nullopt;
}

}  // namespace nettare
