#include "db/kitchen/store_uses.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/edit/food_row_edits.h"
#include "core/food/own_food.h"

namespace nettare {

namespace {

/// The rows of every food version, by its hash.
std::map<std::string, TableRow> versionRows(KitchenStore& store) {
    std::map<std::string, TableRow> rows;
    Query row = store.query("SELECT hash, table_name, release, number FROM food_version");
    while (row.next()) rows[row.text(0)] = {row.text(1), row.text(2), row.text(3)};
    return rows;
}

bool before(const TableRow& a, const TableRow& b) {
    return std::tie(a.table, a.release, a.number) < std::tie(b.table, b.release, b.number);
}

std::vector<TableRow> draftRows(KitchenStore& store, const std::string& recipe) {
    std::vector<TableRow> rows;
    Query row = store.query(
        "SELECT table_name, release, number FROM draft_food WHERE recipe = ? "
        "ORDER BY table_name, release, number");
    row.with(recipe);
    while (row.next()) rows.push_back({row.text(0), row.text(1), row.text(2)});
    return rows;
}

/// Of an own food every version counts, of any other row the row itself.
bool isUseOf(const TableRow& used, const TableRow& row) {
    return isOwn(row) ? isOwn(used) && used.number == row.number : used == row;
}

void addDraftUses(KitchenStore& store, const TableRow& row, std::map<std::string, FoodUse>& uses) {
    Query found =
        store.query("SELECT recipe, release FROM draft_food WHERE table_name = ? AND number = ?");
    found.with(row.table).with(row.number);
    while (found.next()) {
        const TableRow used{row.table, found.text(1), row.number};
        if (!isUseOf(used, row)) continue;
        FoodUse& use = uses[found.text(0)];
        use.inDraft = true;
        use.draftRow = used;
    }
}

void addRevisionUses(KitchenStore& store, const TableRow& row,
                     std::map<std::string, FoodUse>& uses) {
    Query found = store.query(
        "SELECT pin.recipe, max(pin.number), food.release FROM food_version AS food "
        "JOIN revision_food AS pin ON pin.version = food.hash "
        "WHERE food.table_name = ? AND food.number = ? GROUP BY pin.recipe, food.release");
    found.with(row.table).with(row.number);
    while (found.next()) {
        if (!isUseOf({row.table, found.text(2), row.number}, row)) continue;
        FoodUse& use = uses[found.text(0)];
        const auto number = static_cast<int>(found.number(1));
        use.newestRevision = std::max(use.newestRevision.value_or(0), number);
    }
}

}  // namespace

UsedRows usedRowsIn(KitchenStore& store) {
    std::map<std::string, std::set<std::string>> recipes;
    {
        Query row = store.query("SELECT recipe, table_name, release, number FROM draft_food");
        while (row.next())
            recipes[TableRow{row.text(1), row.text(2), row.text(3)}.text()].insert(row.text(0));
    }
    const auto rows = versionRows(store);
    // The index holds both columns, so a hundred thousand revisions are read from it alone.
    Query pin = store.query("SELECT DISTINCT version, recipe FROM revision_food");
    while (pin.next())
        if (const auto row = rows.find(pin.text(0)); row != rows.end())
            recipes[row->second.text()].insert(pin.text(1));
    UsedRows used;
    for (const auto& [row, by] : recipes) used[row] = static_cast<int>(by.size());
    return used;
}

std::vector<FoodUse> usesOf(KitchenStore& store, const TableRow& row) {
    std::map<std::string, FoodUse> uses;
    addDraftUses(store, row, uses);
    addRevisionUses(store, row, uses);
    std::vector<FoodUse> list;
    for (auto& [recipe, use] : uses) {
        Query title = store.query("SELECT title FROM draft WHERE recipe = ?");
        title.with(recipe);
        use.recipe = recipe;
        use.title = title.next() ? title.text(0) : recipe;
        list.push_back(std::move(use));
    }
    std::ranges::sort(list, {}, [](const FoodUse& use) { return std::tie(use.title, use.recipe); });
    return list;
}

void indexDraftFoods(KitchenStore& store, const std::string& recipe, const Json& document) {
    std::vector<TableRow> rows = rowsOf(document);
    std::ranges::sort(rows, before);
    if (rows == draftRows(store, recipe)) return;
    store.query("DELETE FROM draft_food WHERE recipe = ?").with(recipe).run();
    for (const TableRow& row : rows)
        store.query("INSERT INTO draft_food VALUES (?, ?, ?, ?)")
            .with(recipe)
            .with(row.table)
            .with(row.release)
            .with(row.number)
            .run();
}

}  // namespace nettare
