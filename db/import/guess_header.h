#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/food/component.h"

namespace nettare {

/// What a header says of its column.
struct HeaderGuess {
    Component component{};
    std::string unit;  ///< as MappedComponent has it; empty where the header states none
};

/// Reads "Protein (g)", "Energy, kJ", "Sodium mg", "ENERC_KCAL (kcal)", "Calcium, Ca [mg/100 g]".
/// Nothing where the component cannot be told, or its unit not be converted: "Energy" without a
/// unit, "carbohydrate" that may hold fibre or not, "vitamin A" of any kind, IU.
[[nodiscard]] std::optional<HeaderGuess> guessHeader(std::string_view header);

/// The columns of a food that are no components.
enum class FoodColumn { Number, Name, Group, OtherNames, Refuse };

/// Reads "Food code", "Name", "Food group" ...; nothing where it is something else.
[[nodiscard]] std::optional<FoodColumn> guessFoodColumn(std::string_view header);

}  // namespace nettare
