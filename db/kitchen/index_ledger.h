#pragma once

#include <vector>

#include "db/kitchen/ledger_names.h"

namespace nettare {

/// Takes an entry that was just appended into the indexes of the ledger, inside its transaction.
void indexEntry(KitchenStore& store, const ChainedEntry& entry,
                const std::vector<NamedEntry>& names);

/// Fills the indexes of the ledger anew from its entries; one that cannot be read is left out.
void fillLedgerIndexes(KitchenStore& store);

}  // namespace nettare
