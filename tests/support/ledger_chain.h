#pragma once

#include <string>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// A chain of entries, put together as a bench records them: by sequence, without hashes. Ids count
/// up: chainId(1) is that of the first.
class Chain {
public:
    /// What the scale "bench scale" (0.1 g) showed; answers its id.
    std::string show(const std::string& shown, LedgerEntry entry = {});
    std::string showOver(const std::string& tare, const std::string& shown, LedgerEntry entry = {});
    std::string check(const std::string& mass, const std::string& shown,
                      const std::string& scale = "bench scale");
    /// Superseded, LeftOut, TakenIn or Reasoned.
    std::string say(EntryKind kind, const std::string& of, const std::string& reason);
    /// Any other entry; id and sequence are given.
    std::string add(LedgerEntry entry);

    std::vector<ChainedEntry> entries;
};

[[nodiscard]] std::string chainId(std::size_t number);
/// A decimal that is known to be one.
[[nodiscard]] Decimal decimal(const std::string& text);
/// An entry of so many pieces of a food, as a series' mark says.
[[nodiscard]] LedgerEntry pieceOf(const std::string& what, int pieces = 1);

}  // namespace nettare
