#pragma once

#include "app/compare/change_card.h"

#include <vector>

#include "core/publish/comparison.h"

namespace nettare {

/// The cards of a comparison: energy, fat, sodium and protein, then the ceilings and floors.
[[nodiscard]] std::vector<CardWords> cardWords(const Comparison& comparison);

}  // namespace nettare
