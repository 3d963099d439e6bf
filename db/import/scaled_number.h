#pragma once

#include <optional>
#include <string_view>

namespace nettare {

/// A number as tables print it, times a power of ten: digits with at most one decimal sign, a minus
/// and an exponent ("4.7e-7") where it has them. No plus, no spaces, no groups of thousands, never
/// the locale's. The nearest double to the exact product; nothing where the text is anything else
/// or beyond a double.
[[nodiscard]] std::optional<double> readScaledNumber(std::string_view text, char decimalSign = '.',
                                                     int powerOfTen = 0);

/// The power of ten from one unit of mass or energy to another: 3 from "g" to "mg". Knows kg, g,
/// mg, µg (also "ug", "mcg") and ng; kcal and kJ go to themselves only, since tables publish both.
/// Nothing where one cannot be told from the other, as IU.
[[nodiscard]] std::optional<int> powerOfTenBetween(std::string_view from, std::string_view to);

}  // namespace nettare
