#pragma once

#include <string>

#include "core/food/table_food.h"
#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

/// All that a table row says, as JSON: what a food version in a kitchen is. What is missing is left
/// out; numbers read back as the same doubles.
[[nodiscard]] Json tableFoodJson(const TableFood& food);

/// Reads it back. Fails like readRecipe() does, with a pointer.
[[nodiscard]] Result<TableFood> readTableFood(const Json& json);

/// The name of a version of a food: SHA-256 of its canonical JSON.
[[nodiscard]] std::string foodVersion(const TableFood& food);

}  // namespace nettare
