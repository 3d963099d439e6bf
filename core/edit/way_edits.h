#pragma once

#include <string_view>

#include "core/edit/line_edits.h"

namespace nettare {

// Edits that give a line another way to its grams. Fail beside UnknownReference: NotADecimal,
// NotPositive, EmptyText and their kin for what was typed, at its place.

/// Grams of the whole line as the cook assumes them, half-width and reason; a way that was chosen
/// gives way to them.
struct TypedAssumption {
    std::string_view grams, within, reason;
};
[[nodiscard]] Result<LineEdit> setAssumed(const Json& document, std::string_view line,
                                          const TypedAssumption& typed);

/// What a millilitre of the line's food weighs, as decimals, and where that comes from.
struct TypedDensity {
    std::string_view gramsPerMl, within, reason;
};
[[nodiscard]] Result<LineEdit> setDensity(const Json& document, std::string_view line,
                                          const TypedDensity& typed);

}  // namespace nettare
