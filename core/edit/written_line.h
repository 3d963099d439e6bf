#pragma once

#include "core/edit/line_edits.h"
#include "core/wording/line_reading.h"

namespace nettare {

/// A new line at that index from what a cook wrote, with the text itself; without an amount it is
/// to taste, with a size alone one piece of that size. What a pack or the cook says of its weight
/// is kept beside it. Fails as addLine(), and UnitAsked or AmountAmbiguous where the reading leaves
/// a unit or a number open: settle it first.
[[nodiscard]] Result<LineEdit> addWrittenLine(const Json& document, std::size_t at,
                                              const LineReading& reading, const FoodChoice& choice);

}  // namespace nettare
