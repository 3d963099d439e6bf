#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/weighing/judgement.h"

namespace nettare {

/// A published mean that a series is held against, in the series' unit (grams each, or a ratio).
struct PublishedMean {
    std::string source;  ///< "usda-sr 28 09160, 1 lime yields"
    double mean = 0;
    int count = 0;  ///< n; 0 where not published
    std::optional<double> deviation;
};

/// What a series is asked.
struct SeriesQuestion {
    AssumedSpread assumed;               ///< where one reading cannot tell
    std::optional<KnownSpread> earlier;  ///< to be pooled with its own spread
    std::optional<double> others;        ///< N other pieces, > 0
    std::optional<double> wanted;        ///< half-width of their total, g, that would be enough
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
    Pooled,   ///< its own with an earlier or the assumed one
};

/// Welch's t test of the series against a published mean.
struct AgainstPublished {
    AgainstTable verdict = AgainstTable::CannotBeTold;
    double t = 0, freedom = 0;  ///< 0 where it cannot be told
    double difference = 0;      ///< series less published
    /// More single readings, of the spread that is known or assumed now, that would show a
    /// difference as large as this one; nothing where it shows already or none would.
    std::optional<int> moreToTell;
};

/// A drift over time: the slope of single means over the order of readings, by least squares.
struct Drift {
    double perReading = 0;  ///< grams
    double t = 0, freedom = 0;
    bool significant = false;  ///< two-sided 5 %
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
    /// where nothing was wanted or none suffices.
    std::optional<int> more;
    bool noneSuffices = false;  ///< the scatter of the pieces alone is wider than wanted
    double floorWithin = 0;  ///< the half-width that no number of readings goes below; 0 without N
};

/// `readings` in the order they were taken, those that count. Fails: SeriesEmpty.
[[nodiscard]] Result<SeriesReport> seriesReport(const std::vector<SeriesReading>& readings,
                                                const SeriesQuestion& question,
                                                const CoverageOf& coverage);

/// The same for a ratio series: what comes out of one unit of what goes in.
struct RatioReport {
    RatioStatistics statistics;
    SpreadBasis basis = SpreadBasis::Own;
    ValueWithin ratio;
    std::optional<ValueWithin>
        next;  ///< of one more lot of the mean size; nothing with one reading
    std::optional<std::size_t> outlier;
};
[[nodiscard]] Result<RatioReport> ratioReport(const std::vector<RatioReading>& readings,
                                              const SeriesQuestion& question,
                                              const CoverageOf& coverage);

}  // namespace nettare
