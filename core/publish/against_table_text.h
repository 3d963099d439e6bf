#pragma once

#include <string>

#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"

namespace nettare {

/// How a series stands to a published mean: lighter or heavier, no difference, or that it cannot be
/// told, with how many more weighings would tell. `report` has been held against `published`.
[[nodiscard]] std::string againstTableText(const SeriesKey& key, const SeriesReport& report,
                                           const PublishedMean& published);

}  // namespace nettare
