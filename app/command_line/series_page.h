#pragma once

#include <string>

#include "app/bench/bench_series.h"
#include "app/loading/load_dossier.h"
#include "core/support/json.h"

namespace nettare {

/// "prawn meat per prawn", "fennel: edible / bought".
[[nodiscard]] std::string seriesTitle(const SeriesKey& key);

/// A series of a kitchen by its key, tags and question, judged; held against the table where its
/// readings name their row.
[[nodiscard]] Result<BenchSeries> seriesIn(const Kitchen& kitchen, DossierLoader& loader,
                                           const BenchSeries& asked);

/// What it says, a sentence a line; where nothing counts, that.
[[nodiscard]] std::string seriesLines(const BenchSeries& series);

/// The same under its name, what it promises a recipe in whole lines, and its readings; those that
/// do not count with the reason.
[[nodiscard]] std::string seriesPage(const BenchSeries& series, const std::string& promise);

/// All numbers of it, unrounded.
[[nodiscard]] Json seriesJson(const BenchSeries& series);

}  // namespace nettare
