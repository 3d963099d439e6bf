#include "core/quantity/fraction.h"

namespace nettare {

std::optional<Fraction> Fraction::reduced(Wide numerator, Wide denominator) {
    if (denominator == 0) return std::nullopt;
    // The divisor takes the sign of the denominator, which so comes out positive.
    const Wide divisor = commonDivisor(numerator, denominator) * (denominator < 0 ? -1 : 1);
    const auto top = narrowed(numerator / divisor);
    const auto bottom = narrowed(denominator / divisor);
    if (!top || !bottom) return std::nullopt;
    Fraction fraction;
    fraction.numerator_ = *top;
    fraction.denominator_ = *bottom;
    return fraction;
}

std::optional<Fraction> Fraction::make(std::int64_t numerator, std::int64_t denominator) {
    return reduced(numerator, denominator);
}

std::optional<Fraction> Fraction::plus(Fraction other) const {
    return reduced(Wide{numerator_} * other.denominator_ + Wide{other.numerator_} * denominator_,
                   Wide{denominator_} * other.denominator_);
}

std::optional<Fraction> Fraction::times(Fraction other) const {
    return reduced(Wide{numerator_} * other.numerator_, Wide{denominator_} * other.denominator_);
}

std::optional<Fraction> Fraction::dividedBy(Fraction other) const {
    return reduced(Wide{numerator_} * other.denominator_, Wide{denominator_} * other.numerator_);
}

/// By cross products: exact, where the two quotients might round to the same double.
std::strong_ordering operator<=>(Fraction a, Fraction b) {
    const Wide left = Wide{a.numerator_} * b.denominator_;
    const Wide right = Wide{b.numerator_} * a.denominator_;
    return left < right   ? std::strong_ordering::less
           : left > right ? std::strong_ordering::greater
                          : std::strong_ordering::equal;
}

}  // namespace nettare
