#include "db/kitchen/store_foods.h"

#include <algorithm>

#include "core/food/own_food.h"
#include "core/food/table_food_json.h"
#include "core/support/sha256.h"
#include "db/kitchen/store_own_foods.h"
#include "db/kitchen/stored_json.h"

namespace nettare {

namespace {

bool hasVersion(KitchenStore& store, const std::string& hash) {
    Query row = store.query("SELECT 1 FROM food_version WHERE hash = ?");
    row.with(hash);
    return row.next();
}

}  // namespace

Result<TableFood> versionFrom(const KitchenStore& store, const std::string& text) {
    const auto json = storedJson(store, text, "a food version");
    if (!json) return fail(json.error());
    auto food = readTableFood(*json);
    if (!food) return fail(damaged(store.path, "a food version"));
    return food;
}

Result<const TableFood*> foodOfVersion(KitchenStore& store, const std::string& version) {
    constexpr std::size_t kMostAtHand = 1000;
    if (const auto known = store.foodVersions.find(version); known != store.foodVersions.end())
        return &known->second;
    Query row = store.query("SELECT food FROM food_version WHERE hash = ?");
    row.with(version);
    if (!row.next()) return fail(damaged(store.path, "a food version"));
    auto food = versionFrom(store, row.text(0));
    if (!food) return fail(food.error());
    if (store.foodVersions.size() >= kMostAtHand) store.foodVersions.clear();
    return &store.foodVersions.emplace(version, std::move(*food)).first->second;
}

Result<std::optional<TableFood>> firstVersion(KitchenStore& store, const TableRow& row) {
    Query found = store.query(
        "SELECT food FROM food_version WHERE table_name = ? AND release = ? AND number = ? "
        "ORDER BY position LIMIT 1");
    found.with(row.table).with(row.release).with(row.number);
    if (!found.next())
        return isOwn(row) ? ownFoodAt(store, row) : Result<std::optional<TableFood>>{};
    auto food = versionFrom(store, found.text(0));
    if (!food) return fail(food.error());
    return std::optional<TableFood>{std::move(*food)};
}

std::vector<std::string> addVersions(KitchenStore& store, const std::vector<TableFood>& foods) {
    std::vector<std::string> versions;
    for (const TableFood& food : foods) {
        const std::string text = writeJson(tableFoodJson(food));
        const std::string hash = sha256(text);
        if (std::ranges::find(versions, hash) != versions.end()) continue;
        versions.push_back(hash);
        if (hasVersion(store, hash)) continue;
        store.query("INSERT INTO food_version (hash, food) VALUES (?, ?)")
            .with(hash)
            .with(text)
            .run();
    }
    return versions;
}

Result<void> copyFoodsIn(KitchenStore& store, const std::vector<TableFood>& foods) {
    if (auto open = checkWritable(store); !open) return open;
    WriteTransaction transaction{store};
    static_cast<void>(addVersions(store, foods));
    transaction.commit();
    return {};
}

}  // namespace nettare
