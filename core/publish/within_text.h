#pragma once

#include <string>

#include "core/weighing/series_report.h"

namespace nettare {

/// Decimals, 0 to 4, that show a half-width with one significant digit, with two where it begins
/// with a 1; nothing less than whole numbers.
[[nodiscard]] int decimalsOfWithin(double within);
/// Decimals, 0 to 4, that show two significant digits.
[[nodiscard]] int decimalsOfSpread(double spread);

/// "353 ± 7".
[[nodiscard]] std::string withinText(const ValueWithin& value);
/// "9.3 to 10.3", the lower end down and never below zero, the upper end up.
[[nodiscard]] std::string rangeText(const ValueWithin& value);

/// "thirty-six" up to ninety-nine, else digits: "120", "2.5".
[[nodiscard]] std::string countInWords(double count);
/// With a capital, to begin a sentence.
[[nodiscard]] std::string capitalised(std::string text);

}  // namespace nettare
