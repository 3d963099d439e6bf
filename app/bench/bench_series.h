#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "core/ledger/counted_series.h"
#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The series that the bench shows: the readings of a key that bear all of the tags.
struct BenchSeries {
    SeriesKey key;
    std::vector<std::string> tags;        ///< asked for; empty: all readings of the key
    std::vector<std::string> knownTags;   ///< that occur in the series
    std::vector<LedgerReading> readings;  ///< with those taken back or left out, oldest first
    /// Of `readings`, those that the report counts, in its order: SeriesReport::outlier is an index
    /// in here.
    std::vector<std::size_t> counted;
    std::string row;      ///< TableRow::text() of the food; may be empty
    double others = 0;    ///< N that the report speaks of; 0: none
    double enough = 0;    ///< half-width of their total that would be, g; 0: none
    bool pooled = false;  ///< with the assumed spread
    std::optional<PublishedMean> published;  ///< what the table says of one; of no ratio
    std::optional<SeriesReport> report;      ///< of pieces and measures, where a reading counts
    std::optional<RatioReport> ratio;        ///< of ratios, likewise
};

/// A series with the numbers that its statistics take.
struct ReadSeries {
    BenchSeries shown;
    CountedSeries numbers;
};

/// Reads a series of the ledger; without a report. Fails like Kitchen::seriesEntries().
[[nodiscard]] Result<ReadSeries> readSeries(const Kitchen& kitchen, const SeriesKey& key,
                                            const std::vector<std::string>& tags);

/// What the series itself is asked: by its spread, of N others, against what is published.
[[nodiscard]] SeriesQuestion questionOf(const BenchSeries& series);

/// Fills in the report by that question. Nothing where no reading counts.
void judge(ReadSeries& series);

/// What a food's table says that one of the series weighs: by the size that a tag names, else by
/// the only measure of that name. Nothing where several sizes could be meant.
[[nodiscard]] std::optional<PublishedMean> publishedMeanOf(const TableFood& food,
                                                           const SeriesKey& key,
                                                           const std::vector<std::string>& tags);

/// The row that TableRow::text() names; nothing where it names none.
[[nodiscard]] std::optional<TableRow> rowNamed(const std::string& text);

}  // namespace nettare
