#pragma once

#include "core/food/component.h"
#include "core/label/print_rule.h"
#include "core/support/result.h"

#include <string>
#include <string_view>

namespace nettare {

/// The rounding rule of one component per serving, 21 CFR 101.9(c), amounts in the component's
/// unit.
struct UsAmountRule {
    std::string_view paragraph;  ///< where the law says so, for the cook
    PrintRule bands;
    /// The step is FDA's recommendation for a vitamin or mineral, (c)(8)(ii): the law asks only for
    /// the digits of its own table, so that other roundings are lawful too.
    bool recommended = false;
    /// Amounts below it may be declared as 0, whatever the step: 2 % of the daily value of a
    /// vitamin or mineral, (c)(8)(iii).
    std::optional<Decimal> zeroBelow{};
};

/// The rule of a component; nothing where a US panel has no line for it.
[[nodiscard]] std::optional<UsAmountRule> usAmountRule(Component component);

/// The text a US panel prints for an amount per serving, without its unit: "0", "0.5", "120",
/// "less than 1". Rounded once, from the value written with 12 significant digits, ties up. Where
/// the law leaves a choice: 0 below the floor, then "less than", then the nearest step.
/// Fails: ComponentUnknown without a rule; OutOfRange for what is negative, not finite or beyond
/// 1e9.
[[nodiscard]] Result<std::string> usAmountText(Component component, double amountPerServing);

}  // namespace nettare
