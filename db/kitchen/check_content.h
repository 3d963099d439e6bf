#pragma once

#include <SQLiteCpp/Database.h>

#include <string>

#include "core/support/result.h"
#include "db/kitchen/place.h"

namespace nettare {

/// Whether an open database is the kitchen that its header says it is, before anything is written.
/// Fails: NotAKitchen (without the first tables of every kitchen), KitchenDamaged (without another
/// of its format), KitchenNeighbour (with the log beside it the file is no longer this kitchen; the
/// log is not taken in. A log of another kitchen shows only where that one's identity is in it).
/// Throws SQLite::Exception.
[[nodiscard]] Result<void> checkContent(SQLite::Database& database, const std::string& path,
                                        const KitchenPlace& place);

}  // namespace nettare
