#pragma once

#include <optional>

#include "core/quantity/decimal.h"
#include "core/quantity/wide.h"

namespace nettare {

/// An exact quotient in 128 bits, for what printed numbers give. Every operation answers nothing
/// where the bits do not suffice.
class ExactNumber {
public:
    ExactNumber() = default;
    [[nodiscard]] static std::optional<ExactNumber> of(Decimal decimal);

    [[nodiscard]] std::optional<ExactNumber> plus(ExactNumber other) const;
    [[nodiscard]] std::optional<ExactNumber> times(ExactNumber other) const;
    /// Nothing for a divisor of zero as well.
    [[nodiscard]] std::optional<ExactNumber> dividedBy(ExactNumber other) const;
    [[nodiscard]] ExactNumber negated() const;

    /// First written with 12 significant digits, ties up, as every value of the project is before
    /// it is rounded. Nothing from 1e12 on.
    [[nodiscard]] std::optional<Decimal> twelveDigits() const;

private:
    [[nodiscard]] static std::optional<ExactNumber> reduced(Wide numerator, Wide denominator);

    Wide numerator_ = 0;
    Wide denominator_ = 1;
};

}  // namespace nettare
