#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/bench/weigh_state.h"
#include "core/edit/edit.h"

namespace nettare {

class DraftSession;

/// What one press of "Record reading" writes.
struct BenchRecording {
    std::vector<LedgerEntry> entries;  ///< the last one is what the scale shows now
    std::optional<Edit> edit;          ///< of the open draft
};

/// The ledger's entries of a weighing and the edit that binds it, with new ids. Of a jar's first
/// weighing, and of a food, there is no edit. Fails like recordReading(), with a pointer into the
/// draft's document.
[[nodiscard]] Result<BenchRecording> benchRecording(const WeighState& state, Decimal shown,
                                                    const DraftSession* draft,
                                                    const std::string& at);

/// The state after that was recorded: the bowl shows more, the jar less, the pair goes on.
[[nodiscard]] WeighState afterRecording(WeighState state, const LedgerEntry& last);

}  // namespace nettare
