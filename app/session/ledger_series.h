#pragma once

#include <string>
#include <vector>

#include "core/edit/series_edits.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// What the ledger knows of a series now: the readings that bear all of the tags, and the
/// indications that they refer to. No readings where there is no such series.
[[nodiscard]] Result<SeriesToBind> seriesToBind(const Kitchen& kitchen, const SeriesKey& key,
                                                const std::vector<std::string>& tags);

}  // namespace nettare
