#pragma once

#include "app/compare/change_card.h"

#include "core/publish/compared_figures.h"

namespace nettare {

/// The card of a ceiling or a floor: whether the later state keeps to it, and how it was.
[[nodiscard]] CardWords targetCard(const TargetChange& target);

}  // namespace nettare
