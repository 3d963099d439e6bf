#pragma once

#include "core/food/component.h"
#include "core/support/result.h"

#include <string>

namespace nettare {

/// Percent Daily Value of an amount per serving, as printed: "13%". Rounded once, ties up, from the
/// unrounded amount: (d)(7)(ii) lets one take that or the declared one, this is the project's
/// choice. An amount that itself prints as 0 is declared 0%, so that no line reads "0g 2%".
/// Under 2 % of an RDI is 0% ((c)(8)(iii)). Protein counts only when corrected for digestibility.
/// Fails: ComponentUnknown without a daily value, OutOfRange as usAmountText does.
[[nodiscard]] Result<std::string> usPercentText(Component component, double amountPerServing);

}  // namespace nettare
