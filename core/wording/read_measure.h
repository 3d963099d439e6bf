#pragma once

#include <cstddef>
#include <optional>

#include "core/wording/line_scan.h"
#include "core/wording/read_number.h"

namespace nettare {

/// A measure in the line and the token behind it.
struct MeasureRead {
    std::size_t end;
    LineMeasure measure;
};

/// Amount and unit at `i`: "14.5-oz.", "1 cup plus 2 tbsp", "80g-100g", "6 oz by weight". Nothing
/// where no unit follows the number.
[[nodiscard]] std::optional<MeasureRead> readMeasure(const LineScan& scan, std::size_t i);

/// The same for a number that was read before, whose text begins at `begin`.
[[nodiscard]] std::optional<MeasureRead> measureOf(const LineScan& scan, std::size_t begin,
                                                   const NumberRead& number);

/// Measures with slashes or commas between, "about" before them, that fill [begin, end), such as
/// "about 8 fl oz/240 ml"; where `counts`, also a count such as "about 10 medium". Empty where
/// anything is left over.
[[nodiscard]] std::vector<LineMeasure> measuresIn(const LineScan& scan, Span span, bool counts);

}  // namespace nettare
