#include "db/food_tables.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <set>
#include <system_error>

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

/// Rows of all tables, each once.
Result<std::size_t> countOnce(const std::vector<FoodTable>& tables) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        const auto twin =
            std::ranges::find(tables.begin(), tables.begin() + static_cast<std::ptrdiff_t>(i),
                              identityOf(tables[i]), identityOf);
        count += tables[i].size();
        if (twin == tables.begin() + static_cast<std::ptrdiff_t>(i)) continue;
        const auto mine = tables[i].numbers();
        if (!mine) return fail(mine.error());
        const auto theirs = twin->numbers();
        if (!theirs) return fail(theirs.error());
        const std::set<std::string> known{theirs->begin(), theirs->end()};
        count -= static_cast<std::size_t>(std::ranges::count_if(
            *mine, [&](const std::string& number) { return known.contains(number); }));
    }
    return count;
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
    const auto count = countOnce(all.tables_);
    if (!count) return fail(count.error());
    all.size_ = *count;
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

Result<std::optional<GroupDensity>> FoodTables::groupDensity(std::string_view group) const {
    for (const FoodTable& table : tables_) {
        auto density = table.groupDensity(group);
        if (!density || *density) return density;
    }
    return std::optional<GroupDensity>{};
}

Result<FoodSearch> FoodTables::search(std::string_view words, std::size_t most,
                                      const UsedRows& used) const {
    struct Found {
        FoodHit hit;
        int uses = 0;
    };
    std::vector<Found> found;
    for (const FoodTable& table : tables_) {
        auto hits = table.search(words, most);
        if (!hits) return fail(hits.error());
        for (FoodHit& hit : *hits) {
            const auto same = [&](const Found& other) { return other.hit.row == hit.row; };
            if (std::ranges::any_of(found, same)) continue;
            const auto uses = used.find(hit.row.text());
            found.push_back({std::move(hit), uses == used.end() ? 0 : uses->second});
        }
    }
    FoodSearch search;
    for (Found& one : found)
        if (search.hits.size() < most) search.hits.push_back(std::move(one.hit));
    return search;
}

}  // namespace nettare
