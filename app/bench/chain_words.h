#pragma once

#include <QString>

#include <optional>

#include "core/ledger/chain_check.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The ledger's head on screen: how many entries, where the chain ends, and whether it is intact,
/// where that was checked: "Ledger · nothing is ever overwritten · 12 entries, chain intact, ends
/// in 1f0c22ab". What was recorded since the check is not claimed.
[[nodiscard]] QString ledgerHead(const LedgerEnd& end, const std::optional<ChainState>& checked);

/// The same as a sentence of the printed ledger, whose chain was checked on the way.
[[nodiscard]] QString printedChain(const ChainState& checked);

}  // namespace nettare
