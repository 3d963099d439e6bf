#pragma once

#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// The ledger: see Kitchen.

[[nodiscard]] Result<ChainedEntry> appendEntry(KitchenStore& store, const LedgerEntry& entry);
[[nodiscard]] Result<std::vector<ChainedEntry>> allEntries(KitchenStore& store);

/// Where the chain ends.
struct LedgerHead {
    long long sequence = 0;  ///< 0 where there is no entry yet
    std::string hash;
};
[[nodiscard]] LedgerHead ledgerHead(KitchenStore& store);

}  // namespace nettare
