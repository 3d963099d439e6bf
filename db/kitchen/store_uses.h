#pragma once

#include <string>
#include <vector>

#include "db/food_search.h"
#include "db/kitchen/kitchen_store.h"
#include "db/kitchen/own_food_record.h"

namespace nettare {

// Where foods are used: see Kitchen.

[[nodiscard]] UsedRows usedRowsIn(KitchenStore& store);
[[nodiscard]] std::vector<FoodUse> usesOf(KitchenStore& store, const TableRow& row);

/// Writes which rows a draft uses, inside a transaction; only where that changed.
void indexDraftFoods(KitchenStore& store, const std::string& recipe, const Json& document);

}  // namespace nettare
