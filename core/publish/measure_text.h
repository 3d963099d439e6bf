#pragma once

#include <string>

#include "core/food/measure.h"
#include "core/recipe/dossier.h"

namespace nettare {

/// A measure as its table prints it: "1 cup, sliced = 87 g", "0.5 cup = 143 g".
[[nodiscard]] std::string measureText(const HouseholdMeasure& measure);

/// What a line counts, as typed: "3 tbsp", "2 cloves", "1 can".
[[nodiscard]] std::string lineAmount(const Line& line);

/// At most three significant digits and never fewer than the whole number has: 13.5, 0.913, 1246.
[[nodiscard]] std::string shortNumber(double value);

/// A share as "14 %", with at most two significant digits below ten.
[[nodiscard]] std::string percent(double share);

}  // namespace nettare
