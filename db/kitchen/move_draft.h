#pragma once

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// Applies or takes back edits until so many are applied. Fails: EditDoesNotFit; the document is
/// then of no use.
[[nodiscard]] Result<void> moveCursor(DraftState& state, std::size_t cursor);

/// Brings a draft to where a journal change leaves it. Fails like moveCursor().
[[nodiscard]] Result<void> takeChange(DraftState& state, const JournalChange& change);

}  // namespace nettare
