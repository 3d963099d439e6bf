#pragma once

#include <optional>
#include <string>

#include "core/weighing/series.h"
#include "core/weighing/student_law.h"

namespace nettare {

/// A published mean that a series is held against, in the series' unit (grams each).
struct PublishedMean {
    std::string source;  ///< "usda-sr 28 09160, 1 lime yields"
    double mean = 0;
    int count = 0;  ///< n; 0 where not published
    std::optional<double> deviation;
};

/// Whether a series differs from a published mean.
enum class AgainstTable { Agrees, Differs, CannotBeTold };

/// A series held against a published mean.
struct AgainstPublished {
    AgainstTable verdict = AgainstTable::CannotBeTold;
    double t = 0, freedom = 0;  ///< Welch's; 0 where it cannot be told
    double difference = 0;      ///< series less published
    /// No standard deviation of two or more is published, so that the mean counts as exact.
    bool publishedExact = false;
    /// More single readings, of the spread that is known or assumed now, that would show a
    /// difference as large as this one, against an exact mean where `publishedExact` (then 0 where
    /// the series' own interval leaves the mean out already). Nothing where it shows already, where
    /// none would, or where it takes more than kMostMoreReadings.
    std::optional<int> moreToTell;
};

/// Nobody weighs more for one figure.
inline constexpr int kMostMoreReadings = 1000;

/// Welch's t test, two-sided 5 %, of a series against a published mean with its standard deviation
/// and number; CannotBeTold where either side has no spread of its own.
[[nodiscard]] AgainstPublished againstTable(const PieceStatistics& series,
                                            const PublishedMean& published,
                                            const CoverageOf& coverage);

}  // namespace nettare
