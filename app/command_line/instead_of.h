#pragma once

#include <string>
#include <vector>

#include "app/command_line/bench_commands.h"
#include "core/ledger/ledger_reading.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The reading that is corrected, which may have been taken back, but has no successor. Fails:
/// ReadingNotFound, ReadingOverruled.
[[nodiscard]] Result<LedgerReading> correctedReading(const Kitchen& kitchen, const std::string& id);

/// A correction with everything that it does not say.
struct Correction {
    ReadingCommand command;
    std::vector<std::string> takenOver;  ///< in words: "per plum", "3 pieces"
};

/// Takes over from the corrected reading what the command does not say: scale, pieces, state, what
/// for, series and its tags. Not the tare, nor the row. Pieces go with a series of pieces, or with
/// none. Fails: ReadingOverruled (what a ratio names as before was taken back).
[[nodiscard]] Result<Correction> completed(const Kitchen& kitchen, ReadingCommand command,
                                           const LedgerEntry& corrected);

}  // namespace nettare
