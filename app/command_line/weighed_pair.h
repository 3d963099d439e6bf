#pragma once

#include <string>

#include "core/ledger/ledger_reading.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Whether `before` can be what went in for `after`, a reading of a ratio that is to be recorded:
/// it has a net, and no other reading of the series that counts has it already; the one that
/// `after` takes the place of may. Fails: PairNotWhole.
[[nodiscard]] Result<void> judgePair(const Kitchen& kitchen, const LedgerReading& before,
                                     const LedgerEntry& after);

/// What is odd about a pair, a line each: another food went in; more came out than can of that
/// ratio. Empty where nothing is.
[[nodiscard]] std::string pairCautions(const LedgerReading& before, const LedgerReading& after);

}  // namespace nettare
