#include "db/kitchen/move_draft.h"

#include <algorithm>

namespace nettare {

Result<void> moveCursor(DraftState& state, std::size_t cursor) {
    if (cursor > state.edits.size()) return fail(ErrorCode::EditDoesNotFit);
    while (state.cursor > cursor) {
        const Edit back = inverseOf(state.edits[state.cursor - 1]);
        if (const auto failed = apply(back, state.document)) return fail(*failed);
        --state.cursor;
    }
    while (state.cursor < cursor) {
        if (const auto failed = apply(state.edits[state.cursor], state.document))
            return fail(*failed);
        ++state.cursor;
    }
    return {};
}

Result<void> takeChange(DraftState& state, const JournalChange& change) {
    if (change.keptEdits > state.edits.size()) return fail(ErrorCode::EditDoesNotFit);
    // First back to what both sides share, with the edits as they were.
    const std::size_t shared = std::min({state.cursor, change.keptEdits, change.cursor});
    if (auto back = moveCursor(state, shared); !back) return back;
    state.edits.resize(change.keptEdits);
    state.edits.insert(state.edits.end(), change.edits.begin(), change.edits.end());
    return moveCursor(state, change.cursor);
}

}  // namespace nettare
