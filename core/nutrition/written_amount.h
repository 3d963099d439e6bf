#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// An amount as a number; a range ("2-3") is its middle with a rectangle of its width. `number` is
/// that of its line among all recipes.
[[nodiscard]] LinearForm amountOf(const Amount& amount, std::uint32_t number);
/// That of a line.
[[nodiscard]] LinearForm amountOf(const Line& line, std::uint32_t number);

/// An amount as fine as it was written: its last step as a rectangle, 0.1 of "1,5", a half of
/// "1/2", 1 of "200" (decision of ours).
[[nodiscard]] LinearForm writtenAmount(const Amount& amount, std::uint32_t number);

/// Grams of a line written as a weight. The line's unit must be a mass.
[[nodiscard]] LinearForm writtenGrams(const Line& line, std::uint32_t number);

/// A stick of butter: a unit of mass that no scale shows, so that "1" is a count and no reading.
[[nodiscard]] bool isStick(const Unit& unit);

/// The step of the last digit as written: 1 for "150", 0.1 for "1,5", a quarter for "3/4".
[[nodiscard]] double lastStepOf(const Amount& amount);

}  // namespace nettare
