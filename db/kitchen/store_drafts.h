#pragma once

#include <string>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// Drafts: see Kitchen.

[[nodiscard]] Result<StoredDraft> storedDraft(KitchenStore& store, const std::string& recipe);

[[nodiscard]] Result<void> journalDraft(KitchenStore& store, const std::string& recipe,
                                        const JournalChange& change);

/// The draft with its edits applied. Fails: RecipeNotFound, KitchenDamaged.
[[nodiscard]] Result<DraftState> draftState(KitchenStore& store, const std::string& recipe);

/// The rows of a recipe's first draft, inside a transaction.
void beginDraft(KitchenStore& store, const std::string& recipe, const Json& document,
                const std::string& at);

/// SHA-256 of the canonical document.
[[nodiscard]] std::string documentHash(const Json& document);

}  // namespace nettare
