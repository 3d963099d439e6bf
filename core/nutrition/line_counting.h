#pragma once

#include <optional>
#include <string_view>

#include "core/nutrition/way_to_grams.h"

namespace nettare {

/// Whether a line counts in the figures, by the recipe's own rules (Counting).
enum class LineCounting : unsigned char {
    Counted,
    Between,   ///< optional: half of it, with a rectangle from none to all
    ToTaste,   ///< left out: no amount is written, and nothing was weighed or assumed
    NoPinch,   ///< left out: a pinch would count, but no measure says what one weighs
    Optional,  ///< left out
};
[[nodiscard]] constexpr bool isLeftOut(LineCounting counting) {
    return counting > LineCounting::Between;
}
/// Why a line does not count, or counts in part: "to taste", "optional". Empty for Counted.
[[nodiscard]] std::string_view reasonOf(LineCounting counting);

/// The grams of a line to taste without weighing or assumption, where a pinch for each portion
/// counts and one of the food's own volume measures says what it weighs. A pinch is 1/16 US
/// teaspoon (common practice), give or take half of it. Nothing where no measure is known, or no
/// number of portions.
[[nodiscard]] std::optional<OpenWay> pinchWay(const Dossier& dossier, std::size_t recipe,
                                              std::size_t line);

/// Half of a line that counts between none and all.
[[nodiscard]] LinearForm halfOf(const LinearForm& grams, std::uint32_t line);

}  // namespace nettare
