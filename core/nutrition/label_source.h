#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// Grams that the amounts of a label are of: a serving with the rounding of its printed size, 100
/// g, or 100 mL; what is in millilitres depends on the label's density as well.
[[nodiscard]] LinearForm labelBasis(const LabelFacts& label, std::uint32_t food);

/// Grams of one serving of a label that has a serving size.
[[nodiscard]] LinearForm servingGrams(const LabelFacts& label, std::uint32_t food);

/// Grams of so many millilitres by the density of a label that has one.
[[nodiscard]] LinearForm labelMillilitres(const LabelFacts& label, std::uint32_t food,
                                          double millilitres);

}  // namespace nettare
