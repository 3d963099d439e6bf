#pragma once

#include "core/food/label_line.h"

#include <cstdint>
#include <set>
#include <string>

namespace nettare {

/// Every text that the Commission guidance of December 2012 lets stand for an amount given in
/// millionths of the line's unit, both neighbours in a tie, zeros at the end dropped. Written from
/// the guidance in whole numbers, apart from the program's own rules. Vitamins and minerals: by
/// their significant figures, and to any number of decimals up to five.
[[nodiscard]] std::set<std::string> lawfulEuPrints(const LabelLine& line, std::int64_t millionths);

}  // namespace nettare
