#pragma once

#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// An entry that another one names.
struct NamedEntry {
    std::int64_t sequence = 0;
    bool speaks = false;  ///< named by refersTo; else as a tare or as what was before

    friend bool operator==(const NamedEntry&, const NamedEntry&) = default;
};

/// The entries that one names which is to follow the last, each once. Fails where it cannot
/// follow: LedgerIdUsed; LedgerEntryNotFound (an entry that it names); ReadingNotFound (one that
/// it names is no indication); ReadingOverruled (it takes back, leaves out or takes in what was
/// superseded); ReadingNotLeftOut (it gives a reason for what counts, or takes it in
/// where it is of no series, or was said to be as weighed before).
[[nodiscard]] Result<std::vector<NamedEntry>> namesOf(KitchenStore& store,
                                                      const LedgerEntry& entry);

/// The same of an entry that is in the ledger: those that are there.
[[nodiscard]] std::vector<NamedEntry> namesOfKept(KitchenStore& store, const LedgerEntry& entry);

}  // namespace nettare
