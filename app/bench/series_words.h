#pragma once

#include <QString>
#include <QStringList>

#include "app/bench/bench_series.h"

namespace nettare {

/// The text with a number and its unit, or a ± and its number, on one line.
[[nodiscard]] QString unbroken(const std::string& text);

/// "Prawn meat per piece", "Fennel: edible / bought".
[[nodiscard]] QString seriesHeading(const SeriesKey& key);

/// As a list shows it: "prawn meat per piece · 6".
[[nodiscard]] QString seriesChoice(const SeriesSummary& series);

/// "Pooled with nothing", "Pooled with the usual spread", "Pooled with prawn meat, 2025".
[[nodiscard]] QString poolText(const PoolChoice& pool);

/// "6 readings · mean 9.82 g · s 0.17 g"; what is not known is left out.
[[nodiscard]] QString seriesSummary(const BenchSeries& series);

/// What the series says: the first sentence is what a cook looks for, the others explain it.
[[nodiscard]] QStringList seriesSentences(const BenchSeries& series);

/// The question about the reading that lies far out; empty where none does.
[[nodiscard]] QString outlierQuestion(const BenchSeries& series);

/// The reading that it is about; null where none is.
[[nodiscard]] const LedgerReading* outlierOf(const BenchSeries& series);

/// What a reading showed: "9.8 g", "58.9 g of 6 pieces".
[[nodiscard]] QString readingText(const LedgerReading& reading);

}  // namespace nettare
