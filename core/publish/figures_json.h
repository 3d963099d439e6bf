#pragma once

#include "core/nutrition/figures.h"
#include "core/support/json.h"

namespace nettare {

/// Figures for other programs: per component its unit, basis, unrounded value, u, nu (null =
/// infinite), low and high (95 %), at_least, at_most (null = no bound), known_share and the sources
/// with name, sensitivity and u; and per line the way to its grams with the alternatives. "without"
/// names the lines that the recipe's rules leave out, "residues" what was left over, where there is
/// any. All other lists are ordered by name, so that the order of lines in a document changes no
/// byte. `cooked` is of that dossier, and `figures` of `cooked`.
[[nodiscard]] Json figuresJson(const Figures& figures, const Dossier& dossier,
                               const Cooked& cooked);

/// Version of the arithmetic that the figures were computed with; it goes up when a digit may
/// change.
inline constexpr int kArithmeticVersion = 6;

}  // namespace nettare
