#pragma once

#include <cstddef>

#include "core/wording/line_food.h"
#include "core/wording/line_scan.h"

namespace nettare {

/// Reads what follows the food from `i` to the end of the line, stretch by stretch.
void readTail(LineScan& scan, std::size_t i);

/// What only the whole line decides: "garlic cloves" and "cinnamon sticks" count by their last
/// word, a stick is a unit of butter alone, an ounce beside grams is one of weight.
void settle(LineScan& scan, const FoodRead& food);

}  // namespace nettare
