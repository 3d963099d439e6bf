#pragma once

#include <optional>
#include <string_view>

#include "core/label/check_label.h"
#include "db/food_tables.h"

namespace nettare {

/// What a millilitre of foods like the one of that name weighs, by the volume measures of the best
/// foods that the tables have for it. What stands behind the first comma is left aside; foods
/// count that hold every word of what is left, since puffed rice is not like rice. Nothing where
/// fewer than three of them have such a measure. Fails: TableUnreadable.
[[nodiscard]] Result<std::optional<LikeDensity>> likeDensity(const FoodTables& tables,
                                                             std::string_view name);

}  // namespace nettare
