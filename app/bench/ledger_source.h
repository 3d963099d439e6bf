#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/ledger/ledger_entry.h"
#include "core/support/result.h"

namespace nettare {

/// Hands the entries of a ledger on, first to last, until `each` answers false. Ready for any
/// thread; may be run again.
using LedgerSource =
    std::function<Result<void>(const std::function<bool(const ChainedEntry&)>& each)>;

/// The ledger of a kitchen's file, read beside whoever writes it. Fails like Kitchen::open().
[[nodiscard]] LedgerSource ledgerOfFile(std::string path);

/// A ledger in memory.
[[nodiscard]] LedgerSource ledgerOf(std::shared_ptr<const std::vector<ChainedEntry>> entries);

}  // namespace nettare
