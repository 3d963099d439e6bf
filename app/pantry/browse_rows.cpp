#include "app/pantry/browse_rows.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>
#include <string_view>

#include "db/own_matches.h"

namespace nettare {

namespace {

struct BrowseWords {
    Q_DECLARE_TR_FUNCTIONS(FoodBrowser)
};

constexpr std::size_t kMostUsed = 60;

void addPart(std::vector<FoodListRow>& rows, const QString& heading,
             std::vector<FoodListRow> part) {
    if (part.empty()) return;
    rows.push_back(headingRow(heading));
    for (FoodListRow& row : part) rows.push_back(std::move(row));
}

/// A row as its text gives it: "usda-sr 28 11957".
TableRow rowOf(const std::string& text) {
    const std::size_t first = text.find(' ');
    const std::size_t last = text.rfind(' ');
    return {text.substr(0, first), text.substr(first + 1, last - first - 1), text.substr(last + 1)};
}

/// As it counts now, else as the kitchen has it, else as the tables do.
std::optional<FoodHit> hitAt(const TableRow& row, const OwnFoods& own, const FoodTables* tables) {
    if (isOwn(row))
        if (const OwnFoodRecord* record = own.standingFor(row.number))
            return hitOf(record->current.food);
    if (const TableFood* food = own.food(row)) return hitOf(*food);
    return tables == nullptr ? std::nullopt : tables->hit(row).value_or(std::nullopt);
}

/// Most used first, then by name; each once.
std::vector<FoodHit> usedHits(const OwnFoods& own, const FoodTables* tables) {
    struct Used {
        FoodHit hit;
        int recipes;
    };
    std::vector<Used> all;
    std::set<std::string> seen;
    for (const auto& [text, recipes] : own.used())
        if (auto hit = hitAt(rowOf(text), own, tables); hit && seen.insert(hit->row.text()).second)
            all.push_back({std::move(*hit), recipes});
    std::ranges::sort(all, {}, [](const Used& used) {
        return std::pair{-used.recipes, std::string_view{used.hit.name}};
    });
    std::vector<FoodHit> hits;
    for (Used& used : all)
        if (hits.size() < kMostUsed) hits.push_back(std::move(used.hit));
    return hits;
}

}  // namespace

UsedRows usesAsListed(const OwnFoods& own) {
    UsedRows listed;
    for (const auto& [text, recipes] : own.used()) {
        const TableRow row = rowOf(text);
        const OwnFoodRecord* const record = isOwn(row) ? own.standingFor(row.number) : nullptr;
        int& uses = listed[record != nullptr ? record->current.food.row.text() : text];
        uses = std::max(uses, recipes);
    }
    return listed;
}

std::vector<FoodListRow> browseRows(const OwnFoods& own, const FoodTables* tables,
                                    const std::vector<FoodGroup>& groups) {
    std::vector<FoodListRow> used, owned, grouped, rows;
    std::set<std::string> shown;
    for (FoodHit& hit : usedHits(own, tables)) {
        shown.insert(hit.row.text());
        used.push_back(foodRow(std::move(hit)));
    }
    for (const OwnFoodRecord& record : own.all())
        if (!record.stays && shown.insert(record.current.food.row.text()).second)
            owned.push_back(foodRow(hitOf(record.current.food)));
    for (const FoodGroup& group : groups) grouped.push_back(groupRow(group));
    addPart(rows, BrowseWords::tr("Used in this kitchen"), std::move(used));
    addPart(rows, BrowseWords::tr("Own foods"), std::move(owned));
    addPart(rows, BrowseWords::tr("By group"), std::move(grouped));
    return rows;
}

}  // namespace nettare
