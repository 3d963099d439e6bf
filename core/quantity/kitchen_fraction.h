#pragma once

#include <optional>
#include <string>

#include "core/quantity/fraction.h"

namespace nettare {

/// What an amount is measured with, and so which parts of a whole can be had (common practice).
enum class KitchenTool {
    Any,  ///< thirds, quarters and eighths; from 1 on no eighths, from 4 halves, from 10 wholes
    Cup,  ///< thirds and quarters; from 4 on halves
    Tablespoon,  ///< halves; from 10 wholes
    Teaspoon,    ///< 1/8, then quarters; from 2 halves, from 10 wholes
};

/// The amount nearest to a computed one that a cook can measure, and what that costs.
struct KitchenFraction {
    Fraction amount;           ///< > 0; the tool's smallest part where the value is smaller
    double relativeError = 0;  ///< amount / value - 1, so +0.05 is 5 % too much; 0 where exact

    [[nodiscard]] std::string text() const;      ///< "1 1/2"
    [[nodiscard]] std::string signText() const;  ///< "1½"
};

/// Nearest by size, halfway up. Nothing for a value that is not positive, not finite or above 1e9.
[[nodiscard]] std::optional<KitchenFraction> kitchenFraction(Fraction value, KitchenTool tool);
/// The same for a double, taken at its 12 significant digits as everything that is printed: an
/// error below 1e-12 is none.
[[nodiscard]] std::optional<KitchenFraction> kitchenFraction(double value, KitchenTool tool);

/// The greatest amount of the tool not above the value; nothing where there is none but zero.
[[nodiscard]] std::optional<Fraction> kitchenFractionBelow(double value, KitchenTool tool);

}  // namespace nettare
