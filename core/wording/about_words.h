#pragma once

#include <cstddef>
#include <string_view>

#include "core/wording/line_scan.h"

namespace nettare {

/// The token behind "about", "approx.", "~", "up to" and their like at `i`; `i` where there are
/// none.
[[nodiscard]] std::size_t aboutEnd(const LineScan& scan, std::size_t i);

/// How a spoon or cup is filled by the word in lower case: "heaping" for "heaped"; empty for other
/// words.
[[nodiscard]] std::string_view fillOf(std::string_view lower);

}  // namespace nettare
