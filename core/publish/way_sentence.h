#pragma once

#include <string>

#include "core/nutrition/way_to_grams.h"

namespace nettare {

/// How a way finds its grams, in plain words with its numbers as printed: "2 cloves × 3 g
/// (usda-sr 28 11215: 1 clove = 3 g); the table gives no spread, 14 % is assumed". No full stop;
/// names the amount, but neither the food nor the sum, which stand beside it.
[[nodiscard]] std::string waySentence(const Dossier& dossier, std::size_t recipe, std::size_t line,
                                      const OpenWay& way);

}  // namespace nettare
