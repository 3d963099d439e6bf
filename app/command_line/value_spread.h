#pragma once

#include <optional>

#include "core/food/profile.h"
#include "db/food_value.h"

namespace nettare {

/// How far one lot of a food may lie from a table's value.
struct ValueSpread {
    double u = 0;        ///< standard uncertainty of one lot, in the unit of the value
    double freedom = 0;  ///< degrees of freedom
    bool assumed = false;

    /// Half-width of the 95 % interval.
    [[nodiscard]] double halfWidth() const;
};

/// From the value's standard error and data points, as published: the scatter of lots, and of
/// their mean. Else from the spread that is assumed for it in `profile`, where it is a component
/// of the program. Nothing where neither is known.
[[nodiscard]] std::optional<ValueSpread> spreadOf(const FoodValue& value, const Profile& profile);

}  // namespace nettare
