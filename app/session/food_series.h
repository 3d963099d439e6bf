#pragma once

#include <string>
#include <vector>

#include "core/recipe/dossier.h"
#include "core/weighing/series.h"

namespace nettare {

/// What a cook's own series says that one piece or measure of a food weighs.
struct FoodSeries {
    std::string name;    ///< as the recipe calls the series
    std::string of;      ///< "clove", "tbsp"
    std::string recipe;  ///< its title
    PieceStatistics grams;
};

/// The series by which the recipe of a dossier weighs a food, each once. Ratios are no weights and
/// are left out.
[[nodiscard]] std::vector<FoodSeries> seriesOf(const Dossier& dossier, const TableRow& row);

}  // namespace nettare
