#pragma once

#include <functional>
#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// The ledger: see Kitchen.

[[nodiscard]] Result<ChainedEntry> appendEntry(KitchenStore& store, const LedgerEntry& entry);

/// Where the chain ends.
[[nodiscard]] LedgerEnd ledgerEndIn(KitchenStore& store);

/// Whether an entry has that hash.
[[nodiscard]] bool hasHash(KitchenStore& store, const std::string& hash);

}  // namespace nettare
