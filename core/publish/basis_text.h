#pragma once

#include <string>

#include "core/nutrition/figures.h"

namespace nettare {

/// "skewer" or "skewers", as the count asks.
/// The words are the document's own, since no rule makes a plural.
[[nodiscard]] std::string pieceWordFor(Count count, const Recipe& recipe);

/// "2 skewers", "150 g": one portion in the recipe's own words.
[[nodiscard]] std::string portionText(const Recipe& recipe);

/// What figures are per: "per skewer", "per portion of 2 skewers", "per 100 g", "per 100 g before
/// cooking", "per batch of 10 skewers", "per batch of 4-6 skewers, counted as 5".
[[nodiscard]] std::string basisText(const Figures& figures, const Recipe& recipe);

}  // namespace nettare
