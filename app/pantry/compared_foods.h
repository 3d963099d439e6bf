#pragma once

#include <QString>

#include <vector>

#include "app/widgets/cell.h"
#include "core/food/table_food.h"

namespace nettare {

/// One component of several foods side by side.
struct ComparedComponent {
    QString name, unit;
    std::vector<Cell>
        values;    ///< one for each food; least and most carry an arrow where they differ
    Cell differs;  ///< "same", "within ±", "2.1 to 3.4 g", "no data for 1 of 3"
    bool same = false;
};

/// The components that at least one of the foods has, per 100 g edible portion. What differs is
/// told by a word and a sign, and where every interval overlaps every other one, by that. At least
/// two foods.
[[nodiscard]] std::vector<ComparedComponent> comparedComponents(
    const std::vector<TableFood>& foods);

}  // namespace nettare
