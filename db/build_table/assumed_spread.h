#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "db/measure_spreads.h"

namespace nettare {

/// The middle value; of an even number of values the mean of the middle two; nothing of none.
[[nodiscard]] std::optional<double> medianOf(std::vector<double> values);

/// Relative spread of single lots where a row publishes none: the median of SE sqrt(n) / mean over
/// the rows that have a standard error and a mean above zero. Carbohydrate and energy have none:
/// theirs follow from their parts by closure. The rule is this project's own.
struct AssumedSpreads {
    std::map<std::string, PerComponent<std::optional<double>>> byGroup;  ///< of the group's rows
    PerComponent<std::optional<double>> overAllGroups{};
};

[[nodiscard]] AssumedSpreads assumedSpreads(const std::vector<TableFood>& foods);

/// Medians of standard deviation / grams over the measures of all foods that publish one. A volume
/// is a spoon, cup, fluid ounce, pint, quart or litre; all else counts pieces.
[[nodiscard]] MeasureSpreads measureSpreads(const std::vector<TableFood>& foods);

}  // namespace nettare
