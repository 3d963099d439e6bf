#pragma once

#include <optional>

#include "core/quantity/decimal.h"

namespace nettare {

/// A closed interval of real numbers, low <= high.
struct Interval {
    double low = 0;
    double high = 0;

    [[nodiscard]] constexpr double width() const { return high - low; }
    [[nodiscard]] constexpr double middle() const { return (low + high) / 2; }
    friend constexpr bool operator==(Interval, Interval) = default;
};

/// An exact interval of decimals whose ends may be left out, as a rounding rule makes it: 0 g of
/// fat stands for 0 up to, but not including, 0.5 g.
struct DecimalInterval {
    Decimal low{};
    Decimal high{};
    bool lowIncluded = true;  ///< whether the rule prints so at the very end
    bool highIncluded = true;

    [[nodiscard]] bool contains(Decimal value) const {
        return (lowIncluded ? value >= low : value > low) &&
               (highIncluded ? value <= high : value < high);
    }
    /// True where no number lies in it: ends crossed, or equal and not both included.
    [[nodiscard]] bool empty() const {
        return high < low || (high == low && !(lowIncluded && highIncluded));
    }
    /// The same ends as doubles, both included: for widths and variances, to which one point adds
    /// nothing.
    [[nodiscard]] Interval closed() const { return {low.value(), high.value()}; }
};

/// What two intervals share; may be empty().
[[nodiscard]] DecimalInterval intersection(const DecimalInterval& a, const DecimalInterval& b);

}  // namespace nettare
