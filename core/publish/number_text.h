#pragma once

#include <string>

#include "core/nutrition/figures.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// A value rounded once to that many decimals, ties up, on the value first written with 12
/// significant digits; U+2212 for minus; a narrow no-break space (U+202F) parts thousands from
/// 10 000. What is missing in part is not for it: figureText() writes bounds.
[[nodiscard]] std::string numberAt(int decimals, double value,
                                   Direction direction = Direction::Nearest);

/// A decimal as it is, with the same minus and the same grouping.
[[nodiscard]] std::string printedDecimal(Decimal number);

/// "± 5": the half-width of a 95 % interval with the decimals of its value; at least one step where
/// it is not zero, since "± 0" would claim an exact value.
[[nodiscard]] std::string halfWidthText(int decimals, double halfWidth);

/// A figure as people read it: "144 kcal ± 5", "at least 3.1 g, at most 4.0 g", "at least 3.1 g". A
/// lower bound rounds down, an upper bound up.
[[nodiscard]] std::string figureText(const Figure& figure);

/// "known for 82 % of the weight", rounded down; empty for complete figures.
[[nodiscard]] std::string knownShareText(const Figure& figure);

}  // namespace nettare
