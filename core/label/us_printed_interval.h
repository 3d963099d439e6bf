#pragma once

#include "core/food/component.h"
#include "core/label/us_rounding.h"
#include "core/quantity/interval.h"
#include "core/support/result.h"

#include <string_view>

namespace nettare {

/// The true amounts per serving, in the component's unit, for which some lawful US rounding prints
/// this text: 50 kcal stands for 47.5 to 55, 0 g of fat for 0 to under 0.5, "less than 1 g" of
/// carbohydrate for 0 to under 1. Both neighbours of a tie are lawful, so such an end is included.
/// Vitamins and minerals: half of the step FDA recommends or of the last printed digit, whichever
/// is larger, since the law fixes no step; 0 stands for all below 2 % of the daily value.
/// Reads "120", "1,200", "0.5", "less than 1", "contains less than 1", "<5", each with or without
/// the component's unit ("g", "mg", "mcg", "kcal").
/// Fails: LabelAmountUnreadable for what is no amount, LabelAmountImpossible where no lawful
/// rounding prints it (52 kcal), ComponentUnknown where a US panel has no such line; values
/// "found" and "component".
[[nodiscard]] Result<DecimalInterval> usPrintedInterval(Component component,
                                                        std::string_view printed);

/// The same for an amount that was read; nothing where the rule prints no such text.
[[nodiscard]] std::optional<DecimalInterval> usAmountsPrintedAs(const UsAmountRule& rule,
                                                                const PrintedAmount& printed);

/// The true grams of a serving that is printed so (> 0): "14 g" stands for 13.5 to 14.5. By the
/// steps of 21 CFR 101.9(b)(7); a figure finer than those steps by half of its last digit.
[[nodiscard]] DecimalInterval servingGramsInterval(Decimal printedGrams);

}  // namespace nettare
