#pragma once

#include <cstdint>
#include <string_view>

namespace nettare {

/// The symbol of a unit by any of its names in one word, in lower case, singular or plural: "tbs"
/// is "tbsp". Empty for other words; "oz" is weight here. In static storage. Common practice.
[[nodiscard]] std::string_view unitNamed(std::string_view lower);

/// What two units have in common: 1 lb is 16 oz.
struct UnitScale {
    std::string_view word;  ///< the symbol
    char kind;              ///< m: metric mass, p: pounds, v: metric volume, c: cups, i: imperial
    std::int64_t numerator, denominator;  ///< size in the smallest unit of its kind
};

/// Null for units that have no fixed ratio to others (pinch, stick).
[[nodiscard]] const UnitScale* unitScale(std::string_view symbol);

/// g, kg, mg, lb: beside one of these an ounce is an ounce of weight.
[[nodiscard]] bool isPlainMass(std::string_view symbol);

}  // namespace nettare
