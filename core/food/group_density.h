#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/food/table_food.h"

namespace nettare {

/// What a millilitre of the foods of one group weighs. No way to grams uses it by itself: a cook
/// may state it for a line, with its reason.
struct GroupDensity {
    std::string group;          ///< "oil"
    double gramsPerMl = 0;      ///< median of the foods
    double relativeSpread = 0;  ///< standard deviation about it, as a share of it
    int foods = 0;              ///< behind it, at least kFewestOfGroup

    /// Half-width, in g/ml, of the rectangle with that standard deviation.
    [[nodiscard]] double within() const;
    /// "oil: median of 12 foods of the table"
    [[nodiscard]] std::string reason() const;
};

inline constexpr int kFewestOfGroup = 3;

/// Grams per millilitre of a food by the largest of its volume measures that say no preparation;
/// nothing where it has none. A chopped food has the density of its gaps.
[[nodiscard]] std::optional<double> gramsPerMlOf(const std::vector<HouseholdMeasure>& measures);

/// Of all groups with enough such foods, by name of the group.
[[nodiscard]] std::vector<GroupDensity> groupDensities(const std::vector<TableFood>& foods);

/// The same of the densities of single foods by group.
[[nodiscard]] std::vector<GroupDensity> groupDensities(
    const std::map<std::string, std::vector<double>>& groups);

}  // namespace nettare
