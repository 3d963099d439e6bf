#pragma once

#include <string>

#include "core/ledger/ledger_walk.h"

namespace nettare {

/// Entries of a ledger as lines for people. Goes over it twice, as LedgerWalk does: every entry is
/// surveyed first.
class LedgerLines {
public:
    void survey(const ChainedEntry& chained) { walk_.survey(chained); }
    /// The line of an entry, with its net where it is a reading, and what became of it.
    [[nodiscard]] std::string row(const ChainedEntry& chained);

private:
    LedgerWalk walk_;
};

}  // namespace nettare
