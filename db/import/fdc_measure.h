#pragma once

#include <optional>
#include <string_view>

#include "core/food/measure.h"

namespace nettare {

/// What food_portion.csv says of a measure; any of it may be empty.
struct FdcPortion {
    std::string_view amount;       ///< "1"
    std::string_view unit;         ///< name of the measure unit: "cup", "undetermined"
    std::string_view description;  ///< of survey foods: "1 cup, chopped"
    std::string_view modifier;     ///< "chopped"; with an undetermined unit "cup, chopped"
};

/// As a household measure without its grams: "1 cup" with the qualifier "chopped". Nothing where
/// the portion names no measure. A size alone, "large", is one of the food.
[[nodiscard]] std::optional<HouseholdMeasure> fdcMeasure(const FdcPortion& portion,
                                                         std::string_view foodName);

}  // namespace nettare
