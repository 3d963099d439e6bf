#pragma once

#include <string>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// What a walk over a ledger found of its chain.
struct ChainState {
    long long entries = 0;  ///< walked over
    long long broken = 0;   ///< sequence of the first that is not as recorded; 0: none
    std::string head;       ///< hash of the last entry

    [[nodiscard]] bool isIntact() const { return broken == 0; }
};

/// Holds the entries of a ledger, handed in first to last, against their hashes and the entry
/// before them. It does not notice an end that was cut off; Kitchen::verify() does.
class ChainCheck {
public:
    void look(const ChainedEntry& chained);
    [[nodiscard]] const ChainState& state() const { return state_; }

private:
    ChainState state_;
};

}  // namespace nettare
