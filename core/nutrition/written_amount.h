#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// The amount of a line as a number; a range ("2-3") is its middle with a rectangle of its width.
/// `number` is that of the line among all recipes.
[[nodiscard]] LinearForm amountOf(const Line& line, std::uint32_t number);

/// Grams of a line written as a weight, its last written step as a rectangle: 0.1 of "1,5", a half
/// of "1/2", 1 of "200" (decision of ours). The line's unit must be a mass.
[[nodiscard]] LinearForm writtenGrams(const Line& line, std::uint32_t number);

}  // namespace nettare
