#pragma once

#include <string>

#include "core/wording/line_reading.h"

namespace nettare {

/// What was read of an ingredient line, a field a row: "  amount       1/3\n". What is asked says
/// so, and what was not understood stands last.
[[nodiscard]] std::string readingText(const LineReading& reading);

}  // namespace nettare
