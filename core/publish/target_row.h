#pragma once

#include <string>

#include "core/nutrition/target.h"

namespace nettare {

/// "ceiling of 150 kcal energy per portion: met; the upper end is 149; probability 98.2 %; the
/// largest portion is 2 skewers". The end of the interval that decides is rounded away from the
/// value, the probability and the portion down, so that no row looks safer than it is.
[[nodiscard]] std::string targetRow(const TargetVerdict& verdict, const Recipe& recipe);

}  // namespace nettare
