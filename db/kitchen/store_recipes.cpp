#include "db/kitchen/store_recipes.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "db/kitchen/store_drafts.h"
#include "db/kitchen/store_search.h"
#include "db/kitchen/stored_json.h"
#include "db/search_words.h"

namespace nettare {

namespace {

/// Identifiers have at most 64 characters; room for "-12345" stays.
constexpr std::size_t kLongestSlug = 56;

/// Words in lower case without accents, one space between: how titles are compared.
std::string plainTitle(std::string_view title) {
    std::string plain;
    for (const std::string& word : searchWords(title)) (plain += plain.empty() ? "" : " ") += word;
    return plain;
}

bool hasRecipe(KitchenStore& store, const std::string& id) {
    Query row = store.query("SELECT 1 FROM recipe WHERE id = ?");
    row.with(id);
    return row.next();
}

std::string freeId(KitchenStore& store, std::string_view title) {
    std::string slug = slugOf(title);
    if (!hasRecipe(store, slug)) return slug;
    int number = 2;
    while (hasRecipe(store, slug + "-" + std::to_string(number))) ++number;
    return slug + "-" + std::to_string(number);
}

void sortByTitle(std::vector<ShelvedRecipe>& recipes) {
    std::vector<std::pair<std::string, ShelvedRecipe>> keyed;
    keyed.reserve(recipes.size());
    for (ShelvedRecipe& recipe : recipes)
        keyed.emplace_back(plainTitle(recipe.title), std::move(recipe));
    std::ranges::sort(keyed, [](const auto& a, const auto& b) {
        return std::tie(a.first, a.second.title, a.second.id) <
               std::tie(b.first, b.second.title, b.second.id);
    });
    recipes.clear();
    for (auto& [key, recipe] : keyed) recipes.push_back(std::move(recipe));
}

/// A whole title goes before those that only begin with the words.
std::vector<ShelvedRecipe> titled(KitchenStore& store, const std::string& plain) {
    std::vector<ShelvedRecipe> whole;
    std::vector<ShelvedRecipe> begun;
    for (ShelvedRecipe& recipe : shelf(store)) {
        const std::string title = plainTitle(recipe.title);
        if (title.starts_with(plain)) begun.push_back(recipe);
        if (title == plain) whole.push_back(std::move(recipe));
    }
    return whole.empty() ? begun : whole;
}

}  // namespace

std::string slugOf(std::string_view title) {
    std::string slug;
    for (const std::string& word : searchWords(title)) {
        std::string plain;
        for (const char c : word)
            if (static_cast<unsigned char>(c) < 0x80) plain += c;
        if (plain.empty()) continue;
        if (slug.size() + 1 + plain.size() > kLongestSlug) break;
        (slug += slug.empty() ? "" : "-") += plain;
    }
    return slug.empty() ? "recipe" : slug;
}

std::vector<ShelvedRecipe> shelf(KitchenStore& store) {
    std::vector<ShelvedRecipe> recipes;
    Query row = store.query(
        "SELECT draft.recipe, title, changed_at, document_hash, "
        "  (SELECT max(number) FROM revision WHERE recipe = draft.recipe), "
        "  (SELECT document_hash FROM revision WHERE recipe = draft.recipe "
        "   ORDER BY number DESC LIMIT 1) "
        "FROM draft");
    while (row.next()) {
        ShelvedRecipe recipe;
        recipe.id = row.text(0);
        recipe.title = row.text(1);
        recipe.changedAt = row.text(2);
        recipe.revisions = row.optionalNumber(4).value_or(0);
        recipe.inWork = row.text(3) != row.text(5);
        recipes.push_back(std::move(recipe));
    }
    sortByTitle(recipes);
    return recipes;
}

std::vector<ShelvedRecipe> shelfWith(KitchenStore& store, std::string_view words) {
    const std::vector<std::string> found = recipesWith(store, words);
    const std::set<std::string> ids{found.begin(), found.end()};
    std::vector<ShelvedRecipe> recipes = shelf(store);
    std::erase_if(recipes, [&](const ShelvedRecipe& recipe) { return !ids.contains(recipe.id); });
    return recipes;
}

Result<std::string> addToShelf(KitchenStore& store, const Json& document, const std::string& at) {
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    WriteTransaction transaction{store};
    const std::string id = freeId(store, textIn(document, "title"));
    store.query("INSERT INTO recipe (id, added_at) VALUES (?, ?)").with(id).with(at).run();
    beginDraft(store, id, document, at);
    transaction.commit();
    return id;
}

Result<std::string> shelvedAs(KitchenStore& store, std::string_view idOrTitle) {
    if (std::string id{idOrTitle}; hasRecipe(store, id)) return id;
    const std::string plain = plainTitle(idOrTitle);
    const std::vector<ShelvedRecipe> found =
        plain.empty() ? std::vector<ShelvedRecipe>{} : titled(store, plain);
    if (found.empty()) return fail(store.error(ErrorCode::RecipeNotFound).with("found", idOrTitle));
    if (found.size() == 1) return found.front().id;
    std::string known;
    for (const ShelvedRecipe& recipe : found)
        (known += known.empty() ? "" : ", ") += "“" + recipe.title + "” (" + recipe.id + ")";
    Error error = store.error(ErrorCode::RecipeAmbiguous).with("found", idOrTitle);
    error.values.push_back({"known", known});
    return fail(error);
}

}  // namespace nettare
