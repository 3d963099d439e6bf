#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/label/print_rule.h"

namespace nettare {

/// An amount as packages print it: "120", "1,200", "0.5", "less than 1", "contains less than 1",
/// "<5", ".5", "1 567", "1'567", each with or without its unit, in any case; spaces of a page count
/// as spaces, and micrograms may be mcg, ug or µg. "0,5" is a half: one comma is a decimal mark,
/// but before exactly three digits of another unit than grams ("1,200" mg, not "0,125" mg). An
/// empty unit lets any one pass. Nothing for what is no amount, less than nothing, or longer than
/// 60 bytes.
[[nodiscard]] std::optional<PrintedAmount> readPrinted(std::string_view printed,
                                                       std::string_view unit);

/// "12,5" as "12.5": one comma without a point is the decimal mark of much of Europe, as
/// readPrinted() tells it from one that parts thousands. Any other text comes back as it is.
[[nodiscard]] std::string withDecimalPoint(std::string_view figure, std::string_view unit);

/// 0.1 for "2.5", 1 for "20": a zero before the point counts as a digit that was printed.
[[nodiscard]] Decimal lastDigitOf(Decimal figure);

}  // namespace nettare
