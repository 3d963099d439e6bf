#include "db/food_tables.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "db/search/search_tables.h"

namespace nettare {

namespace {

/// The imported files by name, so that the same folder always gives the same order.
std::vector<std::string> tableFilesIn(const std::string& folder) {
    std::vector<std::string> paths;
    std::error_code absent;
    for (const auto& entry : std::filesystem::directory_iterator{folder, absent})
        if (entry.path().extension() == ".table") paths.push_back(entry.path().string());
    std::ranges::sort(paths);
    return paths;
}

std::string identityOf(const FoodTable& table) {
    return table.table() + " " + table.release();
}

/// The rows of the table at `place` that an earlier one holds, too. Only a table of the same
/// release can.
Result<FirstHolders> heldEarlier(const std::vector<FoodTable>& tables, std::size_t place) {
    FirstHolders holders;
    for (std::size_t i = 0; i < place; ++i) {
        if (identityOf(tables[i]) != identityOf(tables[place])) continue;
        const auto theirs = tables[i].numbers();
        if (!theirs) return fail(theirs.error());
        for (const std::string& number : *theirs) holders.try_emplace(number, i);
    }
    if (holders.empty()) return holders;
    const auto mine = tables[place].numbers();
    if (!mine) return fail(mine.error());
    FirstHolders shared;
    for (const std::string& number : *mine)
        if (const auto first = holders.find(number); first != holders.end()) shared.insert(*first);
    return shared;
}

}  // namespace

Result<FoodTables> FoodTables::open(const TablePlaces& places) {
    FoodTables all;
    auto starter = FoodTable::open(places.starter);
    if (!starter) return fail(starter.error());
    const auto usual = starter->usualSpread();
    if (!usual) return fail(usual.error());
    all.usualSpread_ = *usual;
    all.tables_.push_back(std::move(*starter));
    for (const std::string& path : tableFilesIn(places.folder)) {
        auto table = FoodTable::open(path);
        if (table)
            all.tables_.push_back(std::move(*table));
        else
            all.failures_.push_back(table.error());
    }
    for (std::size_t i = 0; i < all.tables_.size(); ++i) {
        auto held = heldEarlier(all.tables_, i);
        if (!held) return fail(held.error());
        all.size_ += all.tables_[i].size() - held->size();
        all.heldEarlier_.push_back(std::move(*held));
    }
    return all;
}

Result<std::optional<TableFood>> FoodTables::find(const TableRow& row) const {
    for (const FoodTable& table : tables_) {
        if (!table.isOf(row)) continue;
        auto food = table.find(row.number);
        if (!food) return food;
        if (!*food) continue;
        for (std::size_t i = 0; i < kComponentCount; ++i) {
            Spread& spread = (*food)->profile.spread[i];
            const bool told = spread.standardError || spread.assumedRelative;
            if ((*food)->profile.per100g[i] && !told) spread.assumedRelative = usualSpread_[i];
        }
        return food;
    }
    return std::optional<TableFood>{};
}

Result<std::vector<FoodValue>> FoodTables::values(const TableRow& row) const {
    std::vector<FoodValue> most;
    for (const FoodTable& table : tables_) {
        if (!table.isOf(row)) continue;
        auto values = table.values(row.number);
        if (!values) return values;
        if (values->size() > most.size()) most = std::move(*values);
    }
    return most;
}

const FoodTable* FoodTables::fullest(const std::string& table, const std::string& release) const {
    const FoodTable* most = nullptr;
    for (const FoodTable& each : tables_)
        if (each.table() == table && each.release() == release &&
            (most == nullptr || each.size() > most->size()))
            most = &each;
    return most;
}

Result<std::optional<FoodHit>> FoodTables::hit(const TableRow& row) const {
    for (const FoodTable& table : tables_) {
        if (!table.isOf(row)) continue;
        auto hit = table.hit(row.number);
        if (!hit || *hit) return hit;
    }
    return std::optional<FoodHit>{};
}

Result<std::vector<FoodGroup>> FoodTables::groups() const {
    std::vector<FoodGroup> all;
    for (const FoodTable& table : tables_) {
        if (fullest(table.table(), table.release()) != &table) continue;
        auto groups = table.groups();
        if (!groups) return groups;
        for (FoodGroup& group : *groups) all.push_back(std::move(group));
    }
    return all;
}

Result<GroupPage> FoodTables::page(const FoodGroup& group, std::int64_t next,
                                   std::size_t most) const {
    const FoodTable* const table = fullest(group.table, group.release);
    if (table == nullptr) return GroupPage{{}, 0, true};
    auto page = table->page(group.name, next, most);
    if (!page) return page;
    for (FoodHit& food : page->hits) {
        auto first = hit(food.row);
        if (!first) return fail(first.error());
        if (*first) food = std::move(**first);
    }
    return page;
}

Result<std::optional<GroupDensity>> FoodTables::groupDensity(std::string_view group) const {
    for (const FoodTable& table : tables_) {
        auto density = table.groupDensity(group);
        if (!density || *density) return density;
    }
    return std::optional<GroupDensity>{};
}

Result<FoodSearch> FoodTables::search(std::string_view words, std::size_t most,
                                      const UsedRows& used) const {
    return searchTables({.tables = tables_, .heldEarlier = heldEarlier_}, words, most, used);
}

}  // namespace nettare
