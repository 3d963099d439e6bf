#pragma once

#include <string>

#include "core/wording/line_reading.h"

namespace nettare {

/// The line as a cook would write it, in one order: amount, fill, unit or piece with what it holds,
/// food, second amounts, alternative, preparation, flags. Read again it gives the same fields;
/// where the canonical order cannot say what the reading's own text says, that text is the answer.
[[nodiscard]] std::string writeLine(const LineReading& reading);

/// The canonical order alone, whatever it reads back as.
[[nodiscard]] std::string canonicalLine(const LineReading& reading);

/// "about 2 1/4 lb", "10 medium": a measure by itself, ranges with a hyphen, asked numbers as
/// typed.
[[nodiscard]] std::string writeMeasure(const LineMeasure& measure);

}  // namespace nettare
