#pragma once

#include "core/label/print_rule.h"
#include "core/support/result.h"

#include <string>

namespace nettare {

/// How the grams or millilitres of a serving are rounded, 21 CFR 101.9(b)(7): to 0.1 below 2, to
/// 0.5 from 2 to below 5, to 1 from 5 (the steps below 5 are from memory).
[[nodiscard]] PrintRule usServingMetricRule();

/// The grams or millilitres of a serving as printed, without the unit: "55", "3.5". Fails:
/// NotPositive where nothing would be left, OutOfRange beyond 1e9 or not finite.
[[nodiscard]] Result<std::string> usServingMetricText(double gramsOrMillilitres);

/// The number of servings as printed, 21 CFR 101.9(b)(8)(i): to the whole, but to 0.5 between 2
/// and 5; "about 3.5" where that changed it. Ties go up. Fails as usServingMetricText does.
[[nodiscard]] Result<std::string> usServingsText(double servings);

}  // namespace nettare
