#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/fraction.h"

namespace nettare {

/// An exact decimal number, coefficient x 10^exponent, with the trailing zeros it was written with:
/// "12.50" keeps two decimals. What a scale showed or a pack printed is one of these.
/// At most 12 digits and sizes from 1e-12 to 1e12, so that exact steps of two always fit 128 bits.
class Decimal {
public:
    constexpr Decimal() = default;
    /// Unchecked: keep to the limits above. 12.50 is {1250, -2}.
    constexpr Decimal(std::int64_t coefficient, int exponent)
        : coefficient_{coefficient}, exponent_{exponent} {}

    /// Reads "12", "0.5", "-3.25", with a decimal point only: no "+", no spaces, no exponent,
    /// no empty part, at most 12 digits. Nothing otherwise.
    [[nodiscard]] static std::optional<Decimal> read(std::string_view text);
    /// The value first written with 12 significant digits (the project's rule for ties; a size
    /// below 1e-12 counts as zero). The value must be finite and below 1e12 in size.
    [[nodiscard]] static Decimal fromDouble(double value);

    /// All digits as one whole number, with the sign, and the power of ten of the last one.
    [[nodiscard]] constexpr std::int64_t coefficient() const { return coefficient_; }
    [[nodiscard]] constexpr int exponent() const { return exponent_; }
    /// The nearest double.
    [[nodiscard]] double value() const;
    /// Plain decimal text with as many decimals as it carries.
    [[nodiscard]] std::string text() const;
    /// Digits after the point; 0 for whole numbers.
    [[nodiscard]] constexpr int decimals() const { return exponent_ < 0 ? -exponent_ : 0; }
    /// Exact fraction, or nothing where it does not fit 64 bits.
    [[nodiscard]] std::optional<Fraction> fraction() const;

    [[nodiscard]] Decimal operator-() const { return {-coefficient_, exponent_}; }
    /// Exact. A sum keeps the finer of two exponents: 12.50 + 1 is 13.50.
    [[nodiscard]] Decimal plus(Decimal other) const;
    [[nodiscard]] Decimal minus(Decimal other) const { return plus(-other); }
    /// Exact; the caller keeps the product within 64 bits.
    [[nodiscard]] Decimal times(std::int64_t factor) const {
        return {coefficient_ * factor, exponent_};
    }

    /// Compared by value: 12.50 equals 12.5.
    friend std::strong_ordering operator<=>(Decimal a, Decimal b);
    friend bool operator==(Decimal a, Decimal b) { return std::is_eq(a <=> b); }

private:
    std::int64_t coefficient_ = 0;
    int exponent_ = 0;
};

/// Where a value exactly between two steps goes.
enum class Ties {
    Up,      ///< away from zero: the project's policy, where the law sets none
    Down,    ///< towards zero
    ToEven,  ///< to the even multiple of the step
};

/// Which neighbour a rounding takes.
enum class Direction {
    Nearest,  ///< ties up
    Floor,    ///< towards minus infinity, for lower bounds
    Ceiling,  ///< towards plus infinity, for upper bounds
};

/// The multiple of `step` (positive) nearest to the value, with the decimals of the step.
[[nodiscard]] Decimal roundedToStep(Decimal value, Decimal step, Ties ties = Ties::Up);
/// The next multiple of `step` below or above (or at) the value; Nearest is roundedToStep().
[[nodiscard]] Decimal steppedTo(Decimal value, Decimal step, Direction direction);

}  // namespace nettare
