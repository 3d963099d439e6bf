#pragma once

#include "core/wording/line_scan.h"

namespace nettare {

/// Takes "to taste", "as needed", "q.s." with the "or" before them off the span's ends and sets the
/// flag; with "plus more" before them they stay, and that flag is set. What is left of the span.
[[nodiscard]] Span takeTaste(LineScan& scan, Span span);

/// Takes "optional" off the span's ends and sets the flag. What is left of the span.
[[nodiscard]] Span takeOptional(LineScan& scan, Span span);

/// The token behind "to taste" and its like at `i`, or `i`.
[[nodiscard]] std::size_t tasteEnd(const LineScan& scan, std::size_t i);

/// True where "plus more", "plus extra" or "or more" stands in the span.
[[nodiscard]] bool saysPlusMore(const LineScan& scan, Span span);

}  // namespace nettare
