#pragma once

#include <iosfwd>

#include "app/command_line/bench_commands.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Prints the ledger, first entry first, as a table or as CSV; into a file all or nothing where one
/// is named.
Result<void> showLedger(const LedgerCommand& command, const Kitchen& kitchen, std::ostream& out);

}  // namespace nettare
