#pragma once

#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "core/support/json.h"
#include "db/food_value.h"

namespace nettare {

/// One food of a table, to be shown whole.
struct FoodPage {
    TableFood food;
    std::vector<FoodValue> values;  ///< all that its table publishes
    std::string citation;           ///< of the table
};

/// Name, source, refuse, factors, measures and values as people read them; ± is the half-width of
/// a 95 % interval of one lot or one measure. Components without data are named.
[[nodiscard]] std::string foodText(const FoodPage& page);

/// The same for other programs, unrounded: "u" is the standard uncertainty of one lot, "nu" its
/// degrees of freedom, "assumed" says that the table gives no spread.
[[nodiscard]] Json foodJson(const FoodPage& page);

}  // namespace nettare
