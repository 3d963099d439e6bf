#pragma once

#include <memory>
#include <vector>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// A chain of so many weighings of prawns "prawn 1", "prawn 2" ..., the last but one of which was
/// taken back as a slip of the hand. At least three entries.
[[nodiscard]] std::shared_ptr<const std::vector<ChainedEntry>> longLedger(int entries);

}  // namespace nettare
