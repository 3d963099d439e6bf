#pragma once

#include "app/compare/change_card.h"

#include <vector>

#include "core/publish/comparison.h"

namespace nettare {

/// The two states as sentences name them: "revision 2", "the draft".
struct StateNames {
    QString left, right;
};

/// The cards of a comparison: energy, fat, sodium and protein, then the ceilings and floors. Each
/// figure's change is real, within uncertainty, or not comparable and says why.
[[nodiscard]] std::vector<CardWords> cardWords(const Comparison& comparison,
                                               const StateNames& states);

}  // namespace nettare
