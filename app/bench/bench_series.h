#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "app/session/pool_choice.h"
#include "core/food/table_food.h"
#include "core/ledger/counted_series.h"
#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Readings that a series can be pooled with.
struct EarlierOffer {
    EarlierSeries series;
    int readings = 0;  ///< two or more
};

/// The series that the bench shows: the readings of a key that bear all of the tags.
struct BenchSeries {
    SeriesKey key;
    std::vector<std::string> tags;        ///< asked for; empty: all readings of the key
    std::vector<std::string> knownTags;   ///< that occur in the series
    std::vector<LedgerReading> readings;  ///< with those taken back or left out, oldest first
    /// Of `readings`, those that the report counts, in its order: SeriesReport::outlier is an index
    /// in here.
    std::vector<std::size_t> counted;
    std::string row;    ///< TableRow::text() of the food; may be empty
    double others = 0;  ///< N that the report speaks of; 0: none
    double enough = 0;  ///< half-width of their total that would be, g; 0: none
    PoolChoice pool;    ///< what its spread is to be pooled with
    /// The spread of the earlier series of that choice; nothing where fewer than two readings of it
    /// count.
    std::optional<EarlierSpread> earlier;
    std::vector<EarlierOffer> sameSeriesOffers;  ///< of its other readings, where it is split
    std::optional<PublishedMean> published;      ///< what the table says of one; of no ratio
    std::string notInTable;                      ///< why not, where it names a table's food
    std::optional<SeriesReport> report;          ///< of pieces and measures, where a reading counts
    std::optional<RatioReport> ratio;            ///< of ratios, likewise
};

/// A series with the numbers that its statistics take.
struct ReadSeries {
    BenchSeries shown;
    CountedSeries numbers;
};

/// Reads a series of the ledger, and the one that it is pooled with; without a report. Fails like
/// Kitchen::seriesEntries().
[[nodiscard]] Result<ReadSeries> readSeries(const Kitchen& kitchen, const SeriesKey& key,
                                            const std::vector<std::string>& tags,
                                            const PoolChoice& pool);

/// What a series can be pooled with: the other readings of its own food where it is split, then the
/// other series kept of the same kind and count.
[[nodiscard]] std::vector<EarlierOffer> earlierOffers(const BenchSeries& series,
                                                      const std::vector<SeriesSummary>& kept);

/// What the series itself is asked: by its spread, of N others, against what is published.
[[nodiscard]] SeriesQuestion questionOf(const BenchSeries& series);

/// Fills in the report by that question. Nothing where no reading counts.
void judge(ReadSeries& series);

/// Fills in what the food's table says that one of the series weighs, or why that is not known. A
/// measure is one of the series by its name in singular or plural ("lime", "limes"), or by a
/// condition and the name ("medium", "ear": "medium ear"). Of several the one whose size a
/// condition names is taken. Conditions are those that are shown, and those that every reading that
/// counts bears.
void holdAgainst(BenchSeries& series, const TableFood& food);

/// The row that TableRow::text() names; nothing where it names none.
[[nodiscard]] std::optional<TableRow> rowNamed(const std::string& text);

}  // namespace nettare
