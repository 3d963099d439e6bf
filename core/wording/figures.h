#pragma once

#include <cstddef>
#include <optional>

#include "core/wording/read_number.h"

namespace nettare {

/// One number in figures at `i`, with the fraction behind it: "2", "1,5", "1 1/2", "1½", "1-1/2",
/// "1 and 1/2". What may be thousands is read both ways.
[[nodiscard]] std::optional<NumberRead> oneFigures(const LineScan& scan, std::size_t i);

/// A number that is no range and not asked.
[[nodiscard]] NumberRead exactNumber(std::size_t end, Fraction value);

/// A whole number with a part of one behind it; the number itself where there is none or it is no
/// whole one.
[[nodiscard]] NumberRead withPart(const NumberRead& whole, const std::optional<NumberRead>& part);

}  // namespace nettare
