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

/// Relative spreads of single lots by group, for tables too large to hold their foods.
using SpreadsByGroup = std::map<std::string, PerComponent<std::vector<double>>>;

/// Of one value; nothing where it counts for no median.
[[nodiscard]] std::optional<double> relativeSpread(Component component, double per100g,
                                                   std::optional<double> standardError, int n);
/// The medians of what is in the groups.
[[nodiscard]] AssumedSpreads assumedSpreads(const SpreadsByGroup& groups);

/// Collects standard deviation / grams of measures that publish one. A volume is a spoon, cup,
/// fluid ounce, pint, quart or litre; all else counts pieces.
class MeasureSpreadSample {
public:
    void add(const HouseholdMeasure& measure);
    /// Their medians.
    [[nodiscard]] MeasureSpreads spreads() const;

private:
    std::vector<double> pieces_, volumes_;
};

/// Of the measures of all foods.
[[nodiscard]] MeasureSpreads measureSpreads(const std::vector<TableFood>& foods);

}  // namespace nettare
