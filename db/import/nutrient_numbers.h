#pragma once

#include <optional>
#include <string_view>

#include "core/food/component.h"

namespace nettare {

/// The component of a USDA nutrient number ("208" is ENERC_KCAL); nothing for a number that the
/// program has no component for. Both the Standard Reference and FoodData Central use these
/// numbers.
[[nodiscard]] std::optional<Component> componentOfNutrientNumber(std::string_view number);

/// The USDA nutrient number of a component.
[[nodiscard]] std::string_view nutrientNumberOf(Component component);

/// A unit as USDA tables write it ("g", "MG", "UG", "KCAL", "kJ", "µg" ...) as ours: "g", "mg",
/// "µg", "kcal", "kJ", "IU"; the text itself where it is none of these.
[[nodiscard]] std::string_view unitOfUsda(std::string_view written);

}  // namespace nettare
