#include "db/kitchen/store_revisions.h"

#include "core/support/sha256.h"
#include "db/kitchen/store_foods.h"
#include "db/kitchen/store_ledger.h"
#include "db/kitchen/stored_json.h"

namespace nettare {

namespace {

/// Nothing where there is no such recipe; 0 where nothing was kept yet.
std::optional<int> newestOf(KitchenStore& store, const std::string& recipe) {
    Query row = store.query(
        "SELECT coalesce((SELECT max(number) FROM revision WHERE recipe = id), 0) "
        "FROM recipe WHERE id = ?");
    row.with(recipe);
    if (!row.next()) return std::nullopt;
    return row.optionalNumber(0);
}

Error noRecipe(const KitchenStore& store, const std::string& recipe) {
    return store.error(ErrorCode::RecipeNotFound).with("found", recipe);
}

Error noRevision(const KitchenStore& store, const std::string& recipe, int number, int newest) {
    return store.error(ErrorCode::RevisionNotFound)
        .with("recipe", recipe)
        .with("found", std::to_string(number))
        .with("known", std::to_string(newest));
}

/// Why a revision was not found.
Error notThere(KitchenStore& store, const std::string& recipe, int number) {
    const std::optional<int> newest = newestOf(store, recipe);
    return newest ? noRevision(store, recipe, number, *newest) : noRecipe(store, recipe);
}

std::string nameOf(const std::string& recipe, int number) {
    return "revision " + std::to_string(number) + " of " + recipe;
}

void pinFoods(KitchenStore& store, const std::string& recipe, int number,
              const std::vector<TableFood>& foods) {
    std::int64_t position = 0;
    for (const std::string& version : addVersions(store, foods))
        store.query("INSERT INTO revision_food VALUES (?, ?, ?, ?)")
            .with(recipe)
            .with(std::int64_t{number})
            .with(position++)
            .with(version)
            .run();
}

/// What is stored must be readable again: what parseJson() refuses is not taken.
Result<std::string> readableText(const Json& json) {
    std::string text = writeJson(json);
    if (const auto again = parseJson(text); !again) return fail(again.error());
    return text;
}

struct RevisionTexts {
    std::string document, figures;
};

void writeRevision(KitchenStore& store, const std::string& recipe, int number,
                   const RevisionToKeep& revision, const RevisionTexts& texts) {
    store
        .query(
            "INSERT INTO revision (recipe, number, parent, kept_at, note, document_hash, "
            "arithmetic, ledger_head, document, figures) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(recipe)
        .with(std::int64_t{number})
        .with(revision.parent)
        .with(revision.at)
        .with(revision.note)
        .with(sha256(texts.document))
        .with(std::int64_t{revision.arithmetic})
        .with(ledgerEndIn(store).hash)
        .with(texts.document)
        .with(texts.figures)
        .run();
}

void goOnFrom(KitchenStore& store, const std::string& recipe, int number, const std::string& at) {
    store.query("UPDATE draft SET base_revision = ?, changed_at = ? WHERE recipe = ?")
        .with(std::int64_t{number})
        .with(at)
        .with(recipe)
        .run();
}

/// The first five columns of the queries below.
RevisionSummary summaryFrom(Query& row) {
    RevisionSummary summary;
    summary.number = static_cast<int>(row.number(0));
    summary.parent = row.optionalNumber(1);
    summary.note = row.text(2);
    summary.at = row.text(3);
    summary.hash = row.text(4);
    summary.title = row.text(5);
    return summary;
}

Result<std::vector<PinnedFood>> pinnedFoods(KitchenStore& store, const std::string& recipe,
                                            int number) {
    std::vector<PinnedFood> foods;
    Query row = store.query(
        "SELECT version FROM revision_food WHERE recipe = ? AND number = ? ORDER BY position");
    row.with(recipe).with(std::int64_t{number});
    while (row.next()) {
        std::string version = row.text(0);
        auto food = foodOfVersion(store, version);
        if (!food) return fail(food.error());
        foods.push_back({**food, std::move(version)});
    }
    return foods;
}

}  // namespace

Result<int> keepRevision(KitchenStore& store, const std::string& recipe,
                         const RevisionToKeep& revision) {
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    auto document = readableText(revision.document);
    if (!document) return fail(document.error());
    auto figures = readableText(revision.figures);
    if (!figures) return fail(figures.error());
    WriteTransaction transaction{store};
    const std::optional<int> newest = newestOf(store, recipe);
    if (!newest) return fail(noRecipe(store, recipe));
    if (revision.parent && (*revision.parent < 1 || *revision.parent > *newest))
        return fail(noRevision(store, recipe, *revision.parent, *newest));
    const int number = *newest + 1;
    pinFoods(store, recipe, number, revision.foods);
    writeRevision(store, recipe, number, revision, {std::move(*document), std::move(*figures)});
    goOnFrom(store, recipe, number, revision.at);
    transaction.commit();
    return number;
}

Result<std::vector<RevisionSummary>> revisionsOf(KitchenStore& store, const std::string& recipe) {
    if (!newestOf(store, recipe)) return fail(noRecipe(store, recipe));
    std::vector<RevisionSummary> summaries;
    Query row = store.query(
        "SELECT number, parent, note, kept_at, document_hash, title FROM revision "
        "WHERE recipe = ? ORDER BY number");
    row.with(recipe);
    while (row.next()) summaries.push_back(summaryFrom(row));
    return summaries;
}

Result<StoredRevision> storedRevision(KitchenStore& store, const std::string& recipe, int number) {
    Query row = store.query(
        "SELECT arithmetic, document, figures FROM revision WHERE recipe = ? AND number = ?");
    row.with(recipe).with(std::int64_t{number});
    if (!row.next()) return fail(notThere(store, recipe, number));
    StoredRevision stored;
    stored.arithmetic = static_cast<int>(row.number(0));
    auto document = storedJson(store, row.text(1), nameOf(recipe, number));
    if (!document) return fail(document.error());
    stored.figures = row.text(2);
    auto foods = pinnedFoods(store, recipe, number);
    if (!foods) return fail(foods.error());
    stored.document = std::move(*document);
    stored.foods = std::move(*foods);
    return stored;
}

Result<KeptRevision> keptRevision(KitchenStore& store, const std::string& recipe, int number) {
    Query row = store.query(
        "SELECT number, parent, note, kept_at, document_hash, title, arithmetic, ledger_head, "
        "document, figures FROM revision WHERE recipe = ? AND number = ?");
    row.with(recipe).with(std::int64_t{number});
    if (!row.next()) return fail(notThere(store, recipe, number));
    KeptRevision kept;
    kept.summary = summaryFrom(row);
    kept.arithmetic = static_cast<int>(row.number(6));
    kept.ledgerHead = row.text(7);
    const std::string name = nameOf(recipe, number);
    auto document = storedJson(store, row.text(8), name);
    auto figures = storedJson(store, row.text(9), name);
    auto foods = pinnedFoods(store, recipe, number);
    if (!document) return fail(document.error());
    if (!figures) return fail(figures.error());
    if (!foods) return fail(foods.error());
    kept.document = std::move(*document);
    kept.figures = std::move(*figures);
    kept.foods = std::move(*foods);
    return kept;
}

}  // namespace nettare
