#pragma once

#include <compare>
#include <optional>

#include "core/quantity/fraction.h"

namespace nettare {

/// A positive, exact number of pieces; half a lemon is one. Not a mass and not an index.
class Count {
public:
    /// One piece.
    constexpr Count() = default;
    /// Nothing for zero and negative numbers.
    [[nodiscard]] static std::optional<Count> from(Fraction fraction) {
        if (fraction <= Fraction{0}) return std::nullopt;
        return Count{fraction};
    }

    /// Lowest terms: 1/2 for half a lemon.
    [[nodiscard]] constexpr Fraction exact() const { return fraction_; }
    [[nodiscard]] constexpr double value() const { return fraction_.value(); }
    /// Where the word for one piece is used: half a lemon, one lemon, but 1 1/2 lemons.
    [[nodiscard]] bool isAtMostOne() const { return fraction_ <= Fraction{1}; }

    /// How many times `other` goes into this: 10 skewers in portions of 2 are 5.
    friend double operator/(Count a, Count b) { return a.value() / b.value(); }
    friend bool operator==(Count, Count) = default;
    friend std::strong_ordering operator<=>(Count a, Count b) {
        return a.fraction_ <=> b.fraction_;
    }

private:
    constexpr explicit Count(Fraction fraction) : fraction_{fraction} {}
    Fraction fraction_{1};
};

}  // namespace nettare
