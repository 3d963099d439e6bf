#pragma once

#include <compare>
#include <cstdint>
#include <optional>

#include "core/quantity/wide.h"

namespace nettare {

/// An exact rational number in lowest terms with a positive denominator. Operations answer nothing
/// where numerator or denominator would leave 64 bits. Meant for typed amounts and the ends of
/// printed figures; sums of many unlike denominators outgrow it soon.
class Fraction {
public:
    constexpr Fraction() = default;
    constexpr explicit Fraction(std::int64_t whole) : numerator_{whole} {}
    /// Denominator must not be zero; nothing otherwise.
    [[nodiscard]] static std::optional<Fraction> make(std::int64_t numerator,
                                                      std::int64_t denominator);

    [[nodiscard]] constexpr std::int64_t numerator() const { return numerator_; }
    [[nodiscard]] constexpr std::int64_t denominator() const { return denominator_; }
    /// The nearest double, as long as both parts are below 2^53.
    [[nodiscard]] constexpr double value() const {
        return static_cast<double>(numerator_) / static_cast<double>(denominator_);
    }

    [[nodiscard]] std::optional<Fraction> plus(Fraction other) const;
    [[nodiscard]] std::optional<Fraction> times(Fraction other) const;
    /// Nothing for a divisor of zero as well.
    [[nodiscard]] std::optional<Fraction> dividedBy(Fraction other) const;

    friend bool operator==(Fraction, Fraction) = default;
    friend std::strong_ordering operator<=>(Fraction a, Fraction b);

private:
    /// In lowest terms, the sign above; nothing where that leaves 64 bits.
    [[nodiscard]] static std::optional<Fraction> reduced(Wide numerator, Wide denominator);

    std::int64_t numerator_ = 0;
    std::int64_t denominator_ = 1;
};

}  // namespace nettare
