#pragma once

#include "core/support/json.h"

namespace nettare {

/// tests/data/recipe/full.json: holds every member of a recipe document. Its numbers are invented.
[[nodiscard]] Json fullRecipe();

/// The least that a recipe document may hold: one line of one food.
[[nodiscard]] Json smallRecipe();

}  // namespace nettare
