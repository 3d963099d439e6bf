#pragma once

#include <optional>
#include <vector>

#include "core/weighing/against_table.h"
#include "core/weighing/drift.h"
#include "core/weighing/judgement.h"

namespace nettare {

/// What a series is asked.
struct SeriesQuestion {
    AssumedSpread assumed;     ///< where one reading cannot tell
    bool poolAssumed = false;  ///< the assumed spread stands for an earlier one, where none is
    std::optional<EarlierSpread> earlier;  ///< to be pooled with its own spread
    std::optional<double> others;          ///< N other pieces, > 0
    std::optional<double> wanted;          ///< half-width of their total, g, that would be enough
    std::optional<PublishedMean> published;
};

/// A value with its 95 % half-width.
struct ValueWithin {
    double value = 0;
    double within = 0;
};

/// Why an interval is as wide as it is.
enum class SpreadBasis {
    Own,      ///< four readings or more
    FewOwn,   ///< two or three: t is 12.7 or 4.3
    Assumed,  ///< one reading
    Pooled,   ///< its own with an earlier or the assumed one; of one reading the earlier alone
};

/// Everything that a screen or a command says of a series of pieces or measures.
struct SeriesReport {
    PieceStatistics statistics;
    SpreadBasis basis = SpreadBasis::Own;
    ValueWithin mean;                    ///< of one piece
    ValueWithin next;                    ///< one more single piece
    std::optional<ValueWithin> others;   ///< N others
    std::optional<std::size_t> outlier;  ///< index of the reading to be asked about
    std::optional<Drift> drift;          ///< from four readings on
    std::optional<AgainstPublished> against;
    /// More single readings until N others are within the wanted half-width: 0 = they are; nothing
    /// where nothing was wanted, where none suffices, or where it takes more than a thousand.
    std::optional<int> more;
    bool noneSuffices = false;  ///< the scatter of the pieces alone is wider than wanted
    double floorWithin = 0;  ///< the half-width that no number of readings goes below; 0 without N
};

/// `readings` in the order they were taken, those that count; judgedSeries() of
/// core/nutrition/judged_series.h is the same with the project's own t. Held against a table it is
/// with its own spread alone, pooled or not. Fails: SeriesEmpty.
[[nodiscard]] Result<SeriesReport> seriesReport(const std::vector<SeriesReading>& readings,
                                                const SeriesQuestion& question,
                                                const StudentLaw& student);

/// The same for a ratio series: what comes out of one unit of what goes in.
struct RatioReport {
    RatioStatistics statistics;
    SpreadBasis basis = SpreadBasis::Own;
    ValueWithin ratio;
    /// Of one more lot of the mean size; nothing where the spread is assumed.
    std::optional<ValueWithin> next;
    std::optional<std::size_t> outlier;
};
/// Judged by the residuals y - r x, the odd reading by their own alone. Fails: SeriesEmpty,
/// NothingWeighed.
[[nodiscard]] Result<RatioReport> ratioReport(const std::vector<RatioReading>& readings,
                                              const SeriesQuestion& question,
                                              const StudentLaw& student);

}  // namespace nettare
