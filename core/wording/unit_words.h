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

}  // namespace nettare
