#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// Grams of one serving of a label, with the rounding of the printed grams as its source.
[[nodiscard]] LinearForm servingGrams(const LabelFacts& label, std::uint32_t food);

}  // namespace nettare
