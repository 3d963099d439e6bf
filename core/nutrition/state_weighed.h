#pragma once

#include <optional>

#include "core/nutrition/way_to_grams.h"

namespace nettare {

/// The state in which the grams of a way of a line are told: that of its yield where one was used,
/// else the one that the line says, that of its readings where they were cooked, the one that its
/// preparation tells. Edible grams of what was weighed with bones are without. Nothing where
/// nothing says a state: then it is that of the food's values.
[[nodiscard]] std::optional<FoodState> stateWeighed(const Dossier& dossier, const Line& line,
                                                    const OpenWay& way);

}  // namespace nettare
