#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/wording/line_scan.h"

namespace nettare {

/// Where two units are possible, the one that is more often meant comes first.
struct UnitRead {
    std::size_t end;  ///< the token behind the unit
    std::string_view symbol;
    std::string_view other;  ///< empty where the unit is decided
};

/// The unit whose words stand at token `i`: spelled out or short, plural, dotted, "fl oz" in all
/// its forms, "imperial pint". "T" and "t" are told apart. Sources of the words: common practice.
[[nodiscard]] std::optional<UnitRead> readUnit(const LineScan& scan, std::size_t i);

/// The token behind a unit of length ("cm", "inches", `"`) at `i`, or `i`.
[[nodiscard]] std::size_t lengthUnitEnd(const LineScan& scan, std::size_t i);

/// What two units have in common: 1 lb is 16 oz.
struct UnitScale {
    std::string_view word;  ///< the symbol
    char kind;              ///< m: metric mass, p: pounds, v: metric volume, c: cups, i: imperial
    std::int64_t numerator, denominator;  ///< size in the smallest unit of its kind
};

/// Null for units that have no fixed ratio to others (pinch, stick).
[[nodiscard]] const UnitScale* unitScale(std::string_view symbol);

/// g, kg, mg, lb: beside one of these an ounce is an ounce of weight.
[[nodiscard]] bool isPlainMass(std::string_view symbol);

}  // namespace nettare
