#pragma once

#include <optional>

#include "core/food/component.h"

namespace nettare {

/// How one component of a food is known to vary, per 100 g edible portion, in the component's unit.
struct Spread {
    std::optional<double> standardError;  ///< of the mean, as published; >= 0
    int n = 0;                            ///< data points behind it; 0 where none is published
    /// Relative spread of single lots assumed where nothing is published: the median over the rows
    /// of the same food group that do have one (arithmetic decision, shown to the cook as assumed).
    std::optional<double> assumedRelative;
};

/// Composition per 100 g edible portion. A component without a value is missing, which is never
/// zero.
struct Profile {
    PerComponent<std::optional<double>> per100g{};
    PerComponent<Spread> spread{};

    /// Per 100 g; nothing where it is missing.
    [[nodiscard]] std::optional<double> operator[](Component c) const {
        return per100g[indexOf(c)];
    }
};

/// A food's own energy factors in kcal per g (Merrill and Watt, USDA Handbook 74, as the table
/// gives them) and its grams of protein per gram of nitrogen. Missing where the table gives none.
struct ConversionFactors {
    std::optional<double> nitrogen;
    std::optional<double> protein;
    std::optional<double> fat;
    std::optional<double> carbohydrate;
};

}  // namespace nettare
