#pragma once

#include <iosfwd>

#include "app/command_line/bench_commands.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Records what a scale shows, with its tare, and tells its net, what rounding means for it, and
/// what its series says now. Fails as core/ledger, the kitchen and the scale refuse it;
/// NetNegative, NothingWeighed, ReadingUnitsDiffer, FoodNotFound (the row).
Result<void> recordReading(const ReadingCommand& command, Kitchen& kitchen, DossierLoader& loader,
                           std::ostream& out);

/// Writes that a reading is taken back, left out of its series or taken in again, and why.
Result<void> speakOfReading(const ReadingCommand& command, Kitchen& kitchen, std::ostream& out);

}  // namespace nettare
