#pragma once

#include <cstddef>

#include "core/wording/line_scan.h"

namespace nettare {

/// Where a bracket or a stretch between commas stands.
enum class SegmentPlace {
    BeforePiece,  ///< between number and food: what one piece holds
    AfterPack,    ///< straight after "can" and its like: the same
    AfterUnit,    ///< straight after a unit: the amount said again
    AfterFood,    ///< in a bracket
    Between,      ///< commas, after the food
};

/// Puts down what stands in the span: a flag, a size, a measure, an alternative, else preparation.
void takeSegment(LineScan& scan, Span span, SegmentPlace place);

/// The same for the bracket that opens at `open`; the token behind it.
std::size_t takeBracket(LineScan& scan, std::size_t open, SegmentPlace place);

/// Words after which one comes to something else than the food: "for", "to serve", "plus", "at room
/// temperature", "about 2 cm", "optional"; true where one stands at `i`.
[[nodiscard]] bool isTurn(const LineScan& scan, std::size_t i);

/// True where the token at `i` parts two stretches: comma, colon, a dash between blanks, a long
/// dash.
[[nodiscard]] bool isParting(const LineScan& scan, std::size_t i);

}  // namespace nettare
