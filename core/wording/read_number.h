#pragma once

#include <cstddef>
#include <optional>

#include "core/quantity/fraction.h"
#include "core/wording/line_scan.h"

namespace nettare {

/// A number or range in the line.
struct NumberRead {
    std::size_t end;     ///< the token behind it
    Fraction low, high;  ///< above zero, low <= high
    /// Set where the mark may part thousands: what the number is then.
    std::optional<std::pair<Fraction, Fraction>> grouped;
    bool article = false;  ///< no number but "a" or "an"
    bool about = false;    ///< "3 or so"
    bool assumed = false;  ///< "a few", "several"
};

/// At token `i`: figures, fractions, number words and ranges of them ("2 to 3", "between 2 and 3").
[[nodiscard]] std::optional<NumberRead> readNumber(const LineScan& scan, std::size_t i);

/// The same with no words but "to" and "or" between figures: what stands in brackets.
[[nodiscard]] std::optional<NumberRead> readFigures(const LineScan& scan, std::size_t i);

/// Puts the number down with the text it came from.
void setAmount(const LineScan& scan, std::size_t begin, const NumberRead& number,
               std::optional<Amount>& amount, std::optional<AskedAmount>& asked);

}  // namespace nettare
