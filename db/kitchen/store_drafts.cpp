#include "db/kitchen/store_drafts.h"

#include <algorithm>
#include <utility>

#include "core/support/sha256.h"
#include "db/kitchen/move_draft.h"
#include "db/kitchen/store_search.h"
#include "db/kitchen/stored_json.h"

namespace nettare {

namespace {

std::string nameOfDraft(const std::string& recipe) {
    return "the draft of " + recipe;
}

Result<Json> readBase(KitchenStore& store, const std::string& recipe) {
    Query row = store.query("SELECT document FROM draft_base WHERE recipe = ?");
    row.with(recipe);
    if (!row.next()) return fail(damaged(store.path, nameOfDraft(recipe)));
    return storedJson(store, row.text(0), nameOfDraft(recipe));
}

Result<std::vector<Edit>> readEdits(KitchenStore& store, const std::string& recipe) {
    std::vector<Edit> edits;
    Query row =
        store.query("SELECT position, edit FROM draft_edit WHERE recipe = ? ORDER BY position");
    row.with(recipe);
    while (row.next()) {
        if (row.number(0) != static_cast<std::int64_t>(edits.size()))
            return fail(damaged(store.path, "the journal of " + recipe));
        const auto json = storedJson(store, row.text(1), "the journal of " + recipe);
        if (!json) return fail(json.error());
        auto edit = readEdit(*json);
        if (!edit) return fail(damaged(store.path, "the journal of " + recipe));
        edits.push_back(std::move(*edit));
    }
    return edits;
}

/// The draft that was journalled last is at hand, and is handed out: an edit that does not fit
/// leaves nothing behind.
Result<DraftState> takeState(KitchenStore& store, const std::string& recipe) {
    std::optional<DraftState> last = std::exchange(store.lastDraft, std::nullopt);
    if (last && last->recipe == recipe) return std::move(*last);
    return draftState(store, recipe);
}

/// The draft as its first edits leave it, where one behind them does not fit and a change is about
/// to take that one away.
Result<DraftState> stateOfFirst(KitchenStore& store, const std::string& recipe, std::size_t edits) {
    auto draft = storedDraft(store, recipe);
    if (!draft) return fail(draft.error());
    if (edits >= draft->edits.size()) return fail(damaged(store.path, nameOfDraft(recipe)));
    draft->edits.resize(edits);
    DraftState state{recipe, std::move(draft->edits), 0, std::move(draft->base)};
    if (!moveCursor(state, std::min(draft->cursor, edits)))
        return fail(damaged(store.path, nameOfDraft(recipe)));
    return state;
}

void writeEdits(KitchenStore& store, const std::string& recipe, const JournalChange& change) {
    store.query("DELETE FROM draft_edit WHERE recipe = ? AND position >= ?")
        .with(recipe)
        .with(static_cast<std::int64_t>(change.keptEdits))
        .run();
    auto position = static_cast<std::int64_t>(change.keptEdits);
    for (const Edit& edit : change.edits)
        store.query("INSERT INTO draft_edit VALUES (?, ?, ?)")
            .with(recipe)
            .with(position++)
            .with(writeJson(editJson(edit)))
            .run();
}

void writeChange(KitchenStore& store, const DraftState& state, const JournalChange& change) {
    WriteTransaction transaction{store};
    writeEdits(store, state.recipe, change);
    store
        .query(
            "UPDATE draft SET cursor = ?, changed_at = ?, title = ?, document_hash = ? "
            "WHERE recipe = ?")
        .with(static_cast<std::int64_t>(state.cursor))
        .with(change.at)
        .with(textIn(state.document, "title"))
        .with(documentHash(state.document))
        .with(state.recipe)
        .run();
    indexDraft(store, state.recipe, state.document);
    transaction.commit();
}

}  // namespace

std::string documentHash(const Json& document) {
    return sha256(writeJson(document));
}

Result<StoredDraft> storedDraft(KitchenStore& store, const std::string& recipe) {
    StoredDraft draft;
    {
        Query row =
            store.query("SELECT base_revision, cursor, changed_at FROM draft WHERE recipe = ?");
        row.with(recipe);
        if (!row.next()) return fail(store.error(ErrorCode::RecipeNotFound).with("found", recipe));
        draft.baseRevision = row.optionalNumber(0);
        draft.cursor = static_cast<std::size_t>(row.number(1));
        draft.changedAt = row.text(2);
    }
    auto base = readBase(store, recipe);
    if (!base) return fail(base.error());
    auto edits = readEdits(store, recipe);
    if (!edits) return fail(edits.error());
    if (draft.cursor > edits->size()) return fail(damaged(store.path, nameOfDraft(recipe)));
    draft.base = std::move(*base);
    draft.edits = std::move(*edits);
    return draft;
}

Result<DraftState> draftState(KitchenStore& store, const std::string& recipe) {
    auto draft = storedDraft(store, recipe);
    if (!draft) return fail(draft.error());
    DraftState state{recipe, std::move(draft->edits), 0, std::move(draft->base)};
    if (!moveCursor(state, draft->cursor)) return fail(damaged(store.path, nameOfDraft(recipe)));
    return state;
}

Result<void> journalDraft(KitchenStore& store, const std::string& recipe,
                          const JournalChange& change) {
    if (auto open = checkWritable(store); !open) return open;
    auto state = takeState(store, recipe);
    if (!state) state = stateOfFirst(store, recipe, change.keptEdits);
    if (!state) return fail(state.error());
    if (auto moved = takeChange(*state, change); !moved) return moved;
    writeChange(store, *state, change);
    store.lastDraft = std::move(*state);
    return {};
}

void beginDraft(KitchenStore& store, const std::string& recipe, const Json& document,
                const std::string& at) {
    const std::string text = writeJson(document);
    store.query("INSERT INTO draft VALUES (?, NULL, 0, ?, ?, ?)")
        .with(recipe)
        .with(at)
        .with(textIn(document, "title"))
        .with(sha256(text))
        .run();
    store.query("INSERT INTO draft_base VALUES (?, ?)").with(recipe).with(text).run();
    indexDraft(store, recipe, document);
}

}  // namespace nettare
