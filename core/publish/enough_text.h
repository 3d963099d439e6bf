#pragma once

#include <string>

#include "core/nutrition/enough_weighings.h"

namespace nettare {

/// What more weighings do for a ceiling or floor of the recipe, in a sentence: "For “Skewers”, at
/// most 150 kcal energy per portion: 6 more weighings are enough.", or why none are. What would
/// stay is rounded up and what is left down, so that the two never look alike where they are not.
[[nodiscard]] std::string enoughText(const EnoughWeighings& answer, const Recipe& recipe);

}  // namespace nettare
