#pragma once

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// The parts of a check; each adds what it finds.

/// The ledger's entries against their hashes and their order, and its lists against the entries;
/// the first bad entry is named, also where it is cut off and only a list still has it.
void checkLedger(KitchenStore& store, KitchenCheck& check);

/// Revisions against their hashes, what the ledger says of their indications, and the foods that
/// they need; the ledger against the entry that each revision names as its newest, which is no
/// later one than that of a revision kept after it.
void checkRevisions(KitchenStore& store, KitchenCheck& check);

/// Food versions against their hashes.
void checkFoods(KitchenStore& store, KitchenCheck& check);

/// Own foods: their versions against their hashes and numbers, and that one counts of each.
void checkOwnFoods(KitchenStore& store, KitchenCheck& check);

/// Photographs against their hashes.
void checkPhotos(KitchenStore& store, KitchenCheck& check);

/// Drafts: that their edits apply, and that the shelf tells of the document that comes of it.
void checkDrafts(KitchenStore& store, KitchenCheck& check);

}  // namespace nettare
