#pragma once

#include <vector>

#include "app/pantry/food_list_model.h"
#include "app/session/own_foods.h"
#include "db/food_tables.h"

namespace nettare {

/// What the list of foods shows while nothing is searched for: what this kitchen uses, most used
/// first; its other own foods, those out of use among them; then the groups of the tables.
/// `tables` may be null.
[[nodiscard]] std::vector<FoodListRow> browseRows(const OwnFoods& own, const FoodTables* tables,
                                                  const std::vector<FoodGroup>& groups);

/// In how many recipes each row is, of own foods as they count now, whichever version is used.
[[nodiscard]] UsedRows usesAsListed(const OwnFoods& own);

}  // namespace nettare
