#pragma once

#include <optional>
#include <string_view>

namespace nettare {

/// Millilitres of a volume word of a reference table (its spoons and cups are US customary): "tsp",
/// "tbsp", "cup", "fl_oz", "pint", "quart", "l". Nothing for words that count pieces.
/// Source: NIST Handbook 44, appendix C.
[[nodiscard]] std::optional<double> volumeOfMeasure(std::string_view unit);

}  // namespace nettare
