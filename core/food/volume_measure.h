#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/unit.h"

namespace nettare {

/// Millilitres of a volume word of a reference table (its spoons and cups are US customary): "tsp",
/// "tbsp", "cup", "fl_oz", "pint", "quart", "l". Nothing for words that count pieces and for those
/// that say no volume to compute with, as a dash. Source: NIST Handbook 44, appendix C.
[[nodiscard]] std::optional<double> volumeOfMeasure(std::string_view unit);

/// True where a table's word is that unit of volume: "fl_oz" a US fluid ounce, "cup" a US customary
/// one and no metric one, "dash" a dash.
[[nodiscard]] bool isMeasuredIn(std::string_view tableWord, const Unit& unit);

}  // namespace nettare
