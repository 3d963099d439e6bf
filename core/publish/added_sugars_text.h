#pragma once

#include <string>

#include "core/nutrition/composition.h"

namespace nettare {

/// What counts as added of a food's sugars, per 100 g, and why: "all of its sugars: 82.1 g
/// (honey)", "none (plain single food)", "between none and 6.5 g: nothing says what part is added".
[[nodiscard]] std::string addedSugarsText(const Food& food, const Composition& composition);

}  // namespace nettare
