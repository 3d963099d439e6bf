#pragma once

#include "core/quantity/decimal.h"
#include "core/support/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace nettare {

/// A household measure that a serving size may be given in.
enum class UsHouseholdMeasure { Cup, Tablespoon, Teaspoon, FluidOunce, Ounce, Piece };

/// Amount of a household measure as printed: "2/3", "1 1/2". Steps of 21 CFR 101.9(b)(5) and FDA's
/// guide of 1993: cups by 1/4 or 1/3; tablespoons 1, 1 1/3, 1 1/2, 1 2/3, then whole; teaspoons
/// 1/8 (from memory), 1/4, 1/2, 3/4, then whole; ounces by 1/2; fluid ounces and pieces whole.
/// Halfway goes up, as that guide says. Fails: OutOfRange for what is not finite, beyond 1e9, not
/// positive or too small to print in that measure.
[[nodiscard]] Result<std::string> usHouseholdText(UsHouseholdMeasure measure, double amount);

/// What one household measure holds on a label.
struct UsLabelMeasure {
    Decimal amount;         ///< exact by rule, not the customary measure
    std::string_view unit;  ///< "mL" or "g"
};

/// 21 CFR 101.9(b)(5)(viii): cup 240, tablespoon 15, teaspoon 5, fluid ounce 30 mL; ounce 28 g.
/// Nothing for a piece.
[[nodiscard]] std::optional<UsLabelMeasure> usLabelMeasure(UsHouseholdMeasure measure);

/// How many pieces make one serving, 21 CFR 101.9(b)(2)(i), against the reference amount
/// customarily consumed (RACC). Read in FDA's guide of 1993; that the text of 2016 says the same is
/// from memory.
struct UsPiecesPerServing {
    int fewest = 1;
    int most = 1;                    ///< above `fewest` where the law leaves the choice
    bool onlyIfEatenAtOnce = false;  ///< a piece of twice the reference amount or more
};

/// Up to 50 % of the reference amount: the number nearest to it, ties up; below 67 %: one or two;
/// from there one. Fails: NotPositive, OutOfRange beyond 1e6 pieces or not finite.
[[nodiscard]] Result<UsPiecesPerServing> usPiecesPerServing(double gramsPerPiece,
                                                            double referenceGrams);

}  // namespace nettare
