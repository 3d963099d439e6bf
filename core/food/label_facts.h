#pragma once

#include <string>
#include <vector>

#include "core/food/component.h"
#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// Whose rounding rules a package was printed under.
enum class LabelRules { Us };

/// One line of a label, as printed and without the unit: "120", "0", "0.5", "less than 1", "<5".
struct LabelAmount {
    Component component;
    std::string printed;
};

/// What a package declares per serving: "1 tbsp (14 g)" and its rounded amounts. Components it does
/// not print are missing.
struct LabelFacts {
    LabelRules rules = LabelRules::Us;
    Decimal servingGrams;       ///< as printed, > 0
    Amount householdAmount;     ///< the 1 of "1 tbsp"
    std::string householdUnit;  ///< the tbsp of "1 tbsp"; a piece word where it counts pieces
    std::vector<LabelAmount> amounts;
};

}  // namespace nettare
