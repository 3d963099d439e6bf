#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

struct KitchenStore;

/// Fingerprints of what the indexes of the ledger should hold, and of what they do: sums of a mix
/// of each row, so that they can be taken in any order. Equal sums are equal rows as far as
/// accidents go; they are no defence against a forger, who gains nothing by a wrong index.
struct LedgerPrints {
    std::uint64_t hashes = 0, ids = 0, indications = 0;
    std::uint64_t references = 0, equipment = 0, series = 0;
    std::unordered_set<std::uint64_t> tags;
    /// Of the id of each entry, by sequence.
    std::vector<std::uint64_t> idPrints;

    void add(const LedgerEntry& entry, std::int64_t sequence, std::string_view hash);
    /// Takes those of the entries that follow.
    void append(const LedgerPrints& next);
};

/// What is wrong with the indexes of a ledger whose entries gave these prints, in words for
/// PagesDamaged; empty where nothing is. Throws SQLite::Exception.
[[nodiscard]] std::vector<std::string> wrongIndexes(KitchenStore& store,
                                                    const LedgerPrints& ofEntries);

}  // namespace nettare
