#pragma once

#include <optional>
#include <string>

namespace nettare {

/// A household measure of one food: "1 cup, sliced = 87 g". Its source is that of the food.
struct HouseholdMeasure {
    double amount = 1;                        ///< how many units weigh `grams`
    std::string unit;                         ///< "cup", "tbsp", "clove", "bulb" ...
    std::string qualifier;                    ///< "sliced", "large"; empty where none
    double grams = 0;                         ///< of the whole amount, edible portion
    int n = 0;                                ///< data points; 0 where not published
    std::optional<double> standardDeviation;  ///< of `grams`, where published

    /// Grams of one unit.
    [[nodiscard]] double gramsEach() const { return grams / amount; }
};

}  // namespace nettare
