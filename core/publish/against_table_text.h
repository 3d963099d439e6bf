#pragma once

#include <string>
#include <vector>

#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"

namespace nettare {

/// How a series stands to a published mean: lighter or heavier, no difference, or that it cannot be
/// told, with how many more weighings would tell. `report` has been held against `published`.
[[nodiscard]] std::string againstTableText(const SeriesKey& key, const SeriesReport& report,
                                           const PublishedMean& published);

/// Why a series is held against no published mean: its table has several measures that one of it
/// could be (`fitting`, as "cup, sliced"), or else none, only `all` ("large ear", "cup"). Of many
/// the first four are named.
[[nodiscard]] std::string notInTableText(const SeriesKey& key,
                                         const std::vector<std::string>& fitting,
                                         const std::vector<std::string>& all);

}  // namespace nettare
