#include "core/support/sha256.h"
#include "db/kitchen/store_drafts.h"
#include "db/kitchen/store_foods.h"
#include "db/kitchen/stored_json.h"
#include "db/kitchen/verify_parts.h"

namespace nettare {

void checkFoods(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("SELECT hash, food FROM food_version ORDER BY position");
    while (row.next()) {
        ++check.foodVersions;
        const std::string text = row.text(1);
        if (sha256(text) != row.text(0) || !versionFrom(store, text))
            check.faults.push_back(
                store.error(ErrorCode::FoodVersionChanged).with("found", row.text(0)));
    }
}

void checkDrafts(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query(
        "SELECT recipe.id, draft.title, draft.document_hash FROM recipe LEFT JOIN draft ON "
        "draft.recipe = recipe.id ORDER BY recipe.id");
    while (row.next()) {
        ++check.recipes;
        const auto state = draftState(store, row.text(0));
        if (!state || textIn(state->document, "title") != row.text(1) ||
            documentHash(state->document) != row.text(2))
            check.faults.push_back(
                store.error(ErrorCode::DraftDamaged).with("recipe", row.text(0)));
    }
}

}  // namespace nettare
