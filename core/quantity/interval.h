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
    bool lowIncluded = true;
    bool highIncluded = true;

    [[nodiscard]] bool contains(Decimal value) const {
        return (lowIncluded ? value >= low : value > low) &&
               (highIncluded ? value <= high : value < high);
    }
    [[nodiscard]] bool empty() const {
        return high < low || (high == low && !(lowIncluded && highIncluded));
    }
    [[nodiscard]] Interval closed() const { return {low.value(), high.value()}; }
};

/// What two intervals share; may be empty().
[[nodiscard]] DecimalInterval intersection(const DecimalInterval& a, const DecimalInterval& b);

}  // namespace nettare
