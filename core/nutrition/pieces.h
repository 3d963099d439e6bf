#pragma once

#include "core/nutrition/linear_form.h"

namespace nettare {

/// How many pieces a recipe makes; a range ("4-6") is its middle with a rectangle of its width,
/// where the recipe counts it so.
[[nodiscard]] LinearForm piecesOf(const Dossier& dossier, std::size_t recipe);

}  // namespace nettare
