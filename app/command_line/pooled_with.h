#pragma once

#include <string>
#include <vector>

#include "app/command_line/bench_commands.h"
#include "app/session/pool_choice.h"

namespace nettare {

/// Those of the food as written, else those whose food begins so.
[[nodiscard]] std::vector<SeriesSummary> seriesOfFood(const std::vector<SeriesSummary>& all,
                                                      const std::string& food);

/// “prawn meat per prawn”, “fennel: edible / bought”: for sentences.
[[nodiscard]] std::string seriesTitles(const std::vector<SeriesSummary>& series);

/// What the series of that key is to be pooled with. Fails: SeriesNotFound, SeriesAmbiguous,
/// PoolOfOther, PoolWithItself.
[[nodiscard]] Result<PoolChoice> poolAsked(const std::vector<SeriesSummary>& all,
                                           const SeriesCommand& command, const SeriesKey& key);

}  // namespace nettare
