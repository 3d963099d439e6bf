#pragma once

#include "core/publish/difference_text.h"

namespace nettare {

/// differenceText(), where one more decimal is enough to make ends and difference agree; else the
/// ends with `decimals`, and the difference of the ends as they are written.
[[nodiscard]] DifferenceText calmDifference(int decimals, double before, double after);

/// How many digits stand behind the decimal point.
[[nodiscard]] int decimalsOf(const std::string& number);

}  // namespace nettare
