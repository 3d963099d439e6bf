#include "db/kitchen/store_search.h"

#include <array>

#include "db/kitchen/store_drafts.h"
#include "db/kitchen/store_uses.h"
#include "db/kitchen/stored_json.h"
#include "db/search_words.h"

namespace nettare {

namespace {

/// The columns of recipe_search: title, foods, note, steps.
using SearchTexts = std::array<std::string, 4>;

std::string textsOf(const Json& document, std::string_view list, std::string_view key) {
    std::string all;
    for (const Json& entry : entriesIn(document, list)) (all += textIn(entry, key)) += '\n';
    return all;
}

SearchTexts searchTexts(const Json& document) {
    return {textIn(document, "title"), textsOf(document, "foods", "name"), textIn(document, "note"),
            textsOf(document, "steps", "text")};
}

std::int64_t positionOf(KitchenStore& store, const std::string& recipe) {
    Query row = store.query("SELECT position FROM recipe WHERE id = ?");
    row.with(recipe);
    return row.next() ? row.number(0) : 0;
}

bool isIndexedAs(KitchenStore& store, std::int64_t position, const SearchTexts& texts) {
    Query row = store.query("SELECT title, foods, note, steps FROM recipe_search WHERE rowid = ?");
    row.with(position);
    if (!row.next()) return false;
    for (int i = 0; i < 4; ++i)
        if (row.text(i) != texts[static_cast<std::size_t>(i)]) return false;
    return true;
}

}  // namespace

void indexDraft(KitchenStore& store, const std::string& recipe, const Json& document) {
    indexDraftFoods(store, recipe, document);
    const std::int64_t position = positionOf(store, recipe);
    const SearchTexts texts = searchTexts(document);
    if (isIndexedAs(store, position, texts)) return;
    store.query("DELETE FROM recipe_search WHERE rowid = ?").with(position).run();
    store
        .query(
            "INSERT INTO recipe_search (rowid, title, foods, note, steps) "
            "VALUES (?, ?, ?, ?, ?)")
        .with(position)
        .with(texts[0])
        .with(texts[1])
        .with(texts[2])
        .with(texts[3])
        .run();
}

void fillSearch(KitchenStore& store) {
    store.query("DELETE FROM recipe_search").run();
    store.query("DELETE FROM draft_food").run();
    std::vector<std::string> recipes;
    {
        Query row = store.query("SELECT recipe FROM draft");
        while (row.next()) recipes.push_back(row.text(0));
    }
    for (const std::string& recipe : recipes)
        if (const auto state = draftState(store, recipe))
            indexDraft(store, recipe, state->document);
}

std::vector<std::string> recipesWith(KitchenStore& store, std::string_view words) {
    std::vector<std::string> found;
    const std::vector<std::string> asked = searchWords(words);
    if (asked.empty()) return found;
    Query row = store.query(
        "SELECT recipe.id FROM recipe_search JOIN recipe ON recipe.position = recipe_search.rowid "
        "WHERE recipe_search MATCH ?");
    row.with(indexQuery(asked));
    while (row.next()) found.push_back(row.text(0));
    return found;
}

}  // namespace nettare
