#include "core/quantity/decimal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/quantity/wide.h"

namespace nettare {

namespace {

/// What the class promises; aligned() relies on it.
constexpr int kMostDigits = 12;

/// Exact up to 10^38, the largest that 128 bits hold.
constexpr Wide powerOfTen(int exponent) {
    Wide power = 1;
    for (int i = 0; i < exponent; ++i) power *= 10;
    return power;
}

/// 10^0 to 10^22: 5^22 is below 2^53, so that each is an exact double.
constexpr std::array kExactPowers{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                  1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                  1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Both numbers as whole multiples of the finer of their two units, so that they compare exactly.
struct Aligned {
    Wide a, b;
    int exponent;
};

Aligned aligned(Decimal a, Decimal b) {
    const int finest = std::min(a.exponent(), b.exponent());
    return {Wide{a.coefficient()} * powerOfTen(a.exponent() - finest),
            Wide{b.coefficient()} * powerOfTen(b.exponent() - finest), finest};
}

/// Rounded towards minus infinity, where / cuts towards zero; b > 0.
Wide floorQuotient(Wide a, Wide b) {
    const Wide quotient = a / b;
    return a % b < 0 ? quotient - 1 : quotient;
}

/// Fits 64 bits as long as the multiple, counted in the last decimal of the step, is below 9e18.
Decimal multipleOf(Wide count, Decimal step) {
    return {static_cast<std::int64_t>(count) * step.coefficient(), step.exponent()};
}

}  // namespace

std::optional<Decimal> Decimal::read(std::string_view text) {
    const bool negative = !text.empty() && text.front() == '-';
    if (negative) text.remove_prefix(1);
    if (text.empty() || !isDigit(text.front()) || !isDigit(text.back())) return std::nullopt;
    std::int64_t coefficient = 0;
    int digits = 0;
    int exponent = 0;
    bool point = false;
    for (const char c : text) {
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (!isDigit(c) || ++digits > kMostDigits) return std::nullopt;
        coefficient = coefficient * 10 + (c - '0');
        if (point) --exponent;
    }
    return Decimal{negative ? -coefficient : coefficient, exponent};
}

Decimal Decimal::fromDouble(double value) {
    if (std::fabs(value) < 1e-12) return {};
    std::array<char, 40> buffer{};
    // Twelve digits of the binary value, correctly rounded: 2.675 is seen as the tie that the cook
    // reads, though its double lies below it.
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::scientific, 11);
    const std::string_view text{buffer.data(),
                                static_cast<std::size_t>(written.ptr - buffer.data())};
    const std::size_t e = text.find('e');
    std::int64_t coefficient = 0;
    for (const char c : text.substr(0, e))
        if (isDigit(c)) coefficient = coefficient * 10 + (c - '0');
    int exponent = 0;
    // from_chars takes a minus and no plus; to_chars writes both.
    const std::size_t digitsAt = text[e + 1] == '+' ? e + 2 : e + 1;
    std::from_chars(text.data() + digitsAt, text.data() + text.size(), exponent);
    exponent -= 11;
    // Zeros at the end came from asking for twelve digits; nobody wrote them.
    while (coefficient != 0 && coefficient % 10 == 0 && exponent < 0) {
        coefficient /= 10;
        ++exponent;
    }
    return {value < 0 ? -coefficient : coefficient, exponent};
}

double Decimal::value() const {
    // Both parts are exact doubles up to 2^53 and 10^22: one operation rounds once, to the nearest.
    const std::int64_t size = coefficient_ < 0 ? -coefficient_ : coefficient_;
    if (size <= (std::int64_t{1} << 53) && exponent_ >= -22 && exponent_ <= 22) {
        const auto exact = static_cast<double>(coefficient_);
        return exponent_ < 0 ? exact / kExactPowers[static_cast<std::size_t>(-exponent_)]
                             : exact * kExactPowers[static_cast<std::size_t>(exponent_)];
    }
    // Beyond that it is read back as text, which rounds once; a product may round twice.
    const std::string digits = std::to_string(coefficient_) + "e" + std::to_string(exponent_);
    double result = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), result);
    return result;
}

std::string Decimal::text() const {
    std::string digits = std::to_string(coefficient_ < 0 ? -coefficient_ : coefficient_);
    if (exponent_ > 0 && coefficient_ != 0) digits.append(static_cast<std::size_t>(exponent_), '0');
    if (exponent_ < 0) {
        const auto places = static_cast<std::size_t>(-exponent_);
        if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
        digits.insert(digits.size() - places, 1, '.');
    }
    return coefficient_ < 0 ? "-" + digits : digits;
}

std::optional<Fraction> Decimal::fraction() const {
    // 10^18 is the last power of ten in 64 bits.
    if (exponent_ < -18 || exponent_ > 18) return std::nullopt;
    const auto power =
        static_cast<std::int64_t>(powerOfTen(exponent_ < 0 ? -exponent_ : exponent_));
    return exponent_ < 0 ? Fraction::make(coefficient_, power)
                         : Fraction{coefficient_}.times(Fraction{power});
}

Decimal Decimal::plus(Decimal other) const {
    const Aligned both = aligned(*this, other);
    return {static_cast<std::int64_t>(both.a + both.b), both.exponent};
}

std::strong_ordering operator<=>(Decimal a, Decimal b) {
    const Aligned both = aligned(a, b);
    return both.a < both.b   ? std::strong_ordering::less
           : both.a > both.b ? std::strong_ordering::greater
                             : std::strong_ordering::equal;
}

Decimal roundedToStep(Decimal value, Decimal step, Ties ties) {
    // Mirrored, so that ties go away from zero on both sides of it.
    if (value.coefficient() < 0) return -roundedToStep(-value, step, ties);
    const auto [amount, unit, exponent] = aligned(value, step);
    const Wide below = floorQuotient(amount, unit);
    // Twice the rest against the step, since half of an odd step is no whole number.
    const Wide twiceRest = 2 * (amount - below * unit);
    const bool up =
        twiceRest > unit ||
        (twiceRest == unit && (ties == Ties::Up || (ties == Ties::ToEven && below % 2 != 0)));
    return multipleOf(up ? below + 1 : below, step);
}

Decimal steppedTo(Decimal value, Decimal step, Direction direction) {
    if (direction == Direction::Nearest) return roundedToStep(value, step);
    const auto [amount, unit, exponent] = aligned(value, step);
    const Wide below = floorQuotient(amount, unit);
    const bool exact = below * unit == amount;
    return multipleOf(direction == Direction::Ceiling && !exact ? below + 1 : below, step);
}

}  // namespace nettare
