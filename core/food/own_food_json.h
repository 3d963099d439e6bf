#pragma once

#include "core/food/own_food.h"
#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

/// A version of an own food as a kitchen stores it.
[[nodiscard]] Json ownFoodJson(const OwnFood& own);

/// Reads it back. Fails like readTableFood() does, with a pointer; NotADate.
[[nodiscard]] Result<OwnFood> readOwnFood(const Json& json);

}  // namespace nettare
