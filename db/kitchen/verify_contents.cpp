#include "core/food/own_food_json.h"
#include "core/support/sha256.h"
#include "db/kitchen/store_drafts.h"
#include "db/kitchen/store_foods.h"
#include "db/kitchen/store_own_foods.h"
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

namespace {

/// Whether the text is the canonical content of that version.
bool isOwnVersion(const KitchenStore& store, const std::string& text, const std::string& food,
                  std::int64_t version) {
    const auto own = ownVersionFrom(store, text);
    return own && writeJson(ownFoodJson(*own)) == text &&
           own->food.row == TableRow{std::string{kOwnTable}, std::to_string(version), food};
}

void checkWhatCounts(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query(
        "SELECT DISTINCT food FROM own_food_version EXCEPT "
        "SELECT food FROM own_food_event WHERE kind = 'counts'");
    while (row.next())
        check.faults.push_back(store.error(ErrorCode::OwnFoodChanged).with("found", row.text(0)));
    Query event = store.query(
        "SELECT food FROM own_food_event AS event WHERE NOT EXISTS (SELECT 1 FROM "
        "own_food_version AS known WHERE known.food = event.food AND known.version = "
        "coalesce(event.version, 1)) OR (stays IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "
        "own_food_version AS other WHERE other.food = event.stays))");
    while (event.next())
        check.faults.push_back(store.error(ErrorCode::OwnFoodChanged).with("found", event.text(0)));
}

}  // namespace

void checkOwnFoods(KitchenStore& store, KitchenCheck& check) {
    std::string food;
    std::int64_t version = 0;
    Query row = store.query(
        "SELECT hash, content, coalesce(food, ''), coalesce(version, 0) FROM own_food_version "
        "ORDER BY food, version");
    while (row.next()) {
        ++check.ownVersions;
        version = row.text(2) == food ? version + 1 : 1;
        food = row.text(2);
        const std::string text = row.text(1);
        if (sha256(text) != row.text(0) || row.number(3) != version ||
            !isOwnVersion(store, text, food, version))
            check.faults.push_back(store.error(ErrorCode::OwnFoodChanged).with("found", food));
    }
    checkWhatCounts(store, check);
}

void checkPhotos(KitchenStore& store, KitchenCheck& check) {
    Query row = store.query("SELECT hash, bytes FROM label_photo ORDER BY position");
    while (row.next()) {
        ++check.photos;
        if (const std::string hash = row.text(0); sha256(row.text(1)) != hash)
            check.faults.push_back(store.error(ErrorCode::PhotoChanged).with("found", hash));
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
