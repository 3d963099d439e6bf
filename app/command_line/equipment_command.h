#pragma once

#include <iosfwd>

#include "app/command_line/bench_commands.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A line for each scale with its last check, and for each vessel.
Result<void> listEquipment(const Kitchen& kitchen, std::ostream& out);

/// Writes to the ledger that the kitchen has that scale, or what it showed for a known mass; tells
/// whether the check is good, and what a failed one means.
Result<void> keepScale(const ScaleCommand& command, Kitchen& kitchen, std::ostream& out);

/// Writes the tare of an empty vessel to the ledger.
Result<void> keepVessel(const VesselCommand& command, Kitchen& kitchen, std::ostream& out);

}  // namespace nettare
