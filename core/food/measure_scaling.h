#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "core/food/table_food.h"

namespace nettare {

/// Whether two measures of one food say the same of one unit: of the same unit and qualifier at
/// different amounts, or both volumes of the same qualifier. They do where their grams per unit
/// agree within the rounding of each (half a gram) and twice the standard error that they publish.
/// Measures of different things always do.
[[nodiscard]] bool scaleAlike(const HouseholdMeasure& a, const HouseholdMeasure& b);

/// Pairs of indices of measures that do not scale: half a cup 143 g, one cup 279 g.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> measuresThatDoNotScale(
    const TableFood& food);

}  // namespace nettare
