#include "app/session/food_series.h"

#include <algorithm>
#include <set>

#include "core/food/own_food.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

/// Of an own food, in whatever version.
bool isOfRow(const Dossier& dossier, const Line& line, const TableRow& row) {
    const auto* const food = std::get_if<FoodIndex>(&line.what);
    if (food == nullptr || !dossier.foods[food->index].table) return false;
    const TableRow& used = dossier.foods[food->index].table->row;
    return isOwn(row) ? isOwn(used) && used.number == row.number : used == row;
}

}  // namespace

std::vector<FoodSeries> seriesOf(const Dossier& dossier, const TableRow& row) {
    std::vector<FoodSeries> found;
    std::set<std::size_t> seen;
    for (const Line& line : dossier.main().lines) {
        if (!line.series || !isOfRow(dossier, line, row)) continue;
        if (!seen.insert(line.series->series).second) continue;
        const SeriesData& series = dossier.series[line.series->series];
        if (series.kind == SeriesKind::Ratio) continue;
        const auto grams = statisticsOf(dossier, series, dossier.main().assumptions);
        if (grams) found.push_back({series.name, series.of, dossier.main().title, *grams});
    }
    return found;
}

}  // namespace nettare
