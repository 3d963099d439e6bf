#pragma once

#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// The entry of a row (sequence, entry, hash). Fails: KitchenDamaged, naming the entry.
[[nodiscard]] Result<ChainedEntry> entryIn(const KitchenStore& store, Query& row);

/// The entries of all rows that are left, in their order. Where they are many, other threads read
/// what this one takes from the file. `about` so many entries get their memory at once, which is
/// quicker than growing. Fails as entryIn() does.
[[nodiscard]] Result<std::vector<ChainedEntry>> entriesIn(const KitchenStore& store, Query& row,
                                                          std::size_t about = 0);

}  // namespace nettare
