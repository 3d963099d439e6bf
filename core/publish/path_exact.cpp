#include "core/publish/path_exact.h"

#include <cstdint>

namespace nettare {

namespace {

constexpr int kPathDigits = 12;
constexpr int kMostPower = 36;
/// Below 1e-12 a size counts as zero.
constexpr int kMostPathDecimals = 24;

bool productOf(Wide a, Wide b, Wide& product) {
    return !__builtin_mul_overflow(a, b, &product);
}

std::optional<Wide> tenTo(int power) {
    if (power < 0 || power > kMostPower) return std::nullopt;
    Wide ten = 1;
    for (int i = 0; i < power; ++i) ten *= 10;
    return ten;
}

int digitsOf(Wide number) {
    int digits = 0;
    for (; number > 0; number /= 10) ++digits;
    return digits;
}

}  // namespace

std::optional<ExactNumber> ExactNumber::reduced(Wide numerator, Wide denominator) {
    if (denominator == 0) return std::nullopt;
    const Wide divisor = commonDivisor(numerator, denominator);
    ExactNumber number;
    number.numerator_ = numerator / divisor;
    number.denominator_ = denominator / divisor;
    if (number.denominator_ < 0) {
        number.numerator_ = -number.numerator_;
        number.denominator_ = -number.denominator_;
    }
    return number;
}

std::optional<ExactNumber> ExactNumber::of(Decimal decimal) {
    const bool whole = decimal.exponent() >= 0;
    const auto power = tenTo(whole ? decimal.exponent() : -decimal.exponent());
    Wide numerator = decimal.coefficient();
    if (!power || (whole && !productOf(numerator, *power, numerator))) return std::nullopt;
    return reduced(numerator, whole ? 1 : *power);
}

std::optional<ExactNumber> ExactNumber::plus(ExactNumber other) const {
    Wide a = 0;
    Wide b = 0;
    Wide denominator = 0;
    const Wide common = commonDivisor(denominator_, other.denominator_);
    const bool fits = productOf(numerator_, other.denominator_ / common, a) &&
                      productOf(other.numerator_, denominator_ / common, b) &&
                      productOf(denominator_, other.denominator_ / common, denominator) &&
                      !__builtin_add_overflow(a, b, &a);
    return fits ? reduced(a, denominator) : std::nullopt;
}

std::optional<ExactNumber> ExactNumber::times(ExactNumber other) const {
    const auto left = reduced(numerator_, other.denominator_);
    const auto right = reduced(other.numerator_, denominator_);
    Wide numerator = 0;
    Wide denominator = 0;
    const bool fits = left && right && productOf(left->numerator_, right->numerator_, numerator) &&
                      productOf(left->denominator_, right->denominator_, denominator);
    return fits ? reduced(numerator, denominator) : std::nullopt;
}

std::optional<ExactNumber> ExactNumber::dividedBy(ExactNumber other) const {
    const auto inverse = reduced(other.denominator_, other.numerator_);
    return inverse ? times(*inverse) : std::nullopt;
}

ExactNumber ExactNumber::negated() const {
    ExactNumber number = *this;
    number.numerator_ = -numerator_;
    return number;
}

std::optional<Decimal> ExactNumber::twelveDigits() const {
    const Wide size = numerator_ < 0 ? -numerator_ : numerator_;
    Wide written = size / denominator_;
    Wide rest = size % denominator_;
    if (digitsOf(written) > kPathDigits) return std::nullopt;
    int exponent = 0;
    while (digitsOf(written) < kPathDigits && rest != 0 && exponent > -kMostPathDecimals) {
        if (!productOf(rest, 10, rest)) return std::nullopt;
        written = written * 10 + rest / denominator_;
        rest %= denominator_;
        --exponent;
    }
    if (rest >= denominator_ - rest) ++written;
    const auto coefficient = static_cast<std::int64_t>(written);
    return Decimal{numerator_ < 0 ? -coefficient : coefficient, exponent};
}

}  // namespace nettare
