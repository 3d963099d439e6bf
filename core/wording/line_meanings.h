#pragma once

#include <string>
#include <vector>

#include "core/wording/line_reading.h"

namespace nettare {

/// The readings that a line may be by its first question, each with an answer to it; the reading
/// itself where nothing is asked. What a line says once more ("equals") is left as it is.
[[nodiscard]] std::vector<LineReading> meaningsOf(const LineReading& reading);

/// What tells a meaning from the others: "8 oz", "1500 g".
[[nodiscard]] std::string meaningText(const LineReading& meaning);

}  // namespace nettare
