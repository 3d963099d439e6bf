#pragma once

#include <string>
#include <vector>

#include "app/session/pool_choice.h"
#include "core/edit/series_edits.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// What the ledger knows of a series now: the readings that bear all of the tags, and the
/// indications that they refer to. No readings where there is no such series.
[[nodiscard]] Result<SeriesToBind> seriesToBind(const Kitchen& kitchen, const SeriesKey& key,
                                                const std::vector<std::string>& tags);

/// What a document is to say of that choice; nothing where none was made. An earlier series of
/// which fewer than two readings count is pooled with nothing.
[[nodiscard]] Result<std::optional<SeriesPooling>> poolingBy(
    const Kitchen& kitchen, const std::optional<PoolChoice>& choice);

}  // namespace nettare
