#pragma once

#include <string>
#include <vector>

#include "core/wording/line_reading.h"

namespace nettare {

/// The readings that a line may be where a unit or a number is asked, each without the question;
/// the reading itself where nothing is asked. One question after the other: first the number, then
/// the unit, then those of one piece.
[[nodiscard]] std::vector<LineReading> meaningsOf(const LineReading& reading);

/// What tells a meaning from the others: "8 oz", "1500 g".
[[nodiscard]] std::string meaningText(const LineReading& meaning);

}  // namespace nettare
