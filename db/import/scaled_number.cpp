#include "db/import/scaled_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>
#include <utility>

namespace nettare {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Takes digits from the front; false where there is none.
bool takeDigits(std::string_view& text) {
    const std::size_t before = text.size();
    while (!text.empty() && isDigit(text.front())) text.remove_prefix(1);
    return text.size() < before;
}

/// A number in parts: "-12.5" and "e3".
struct NumberParts {
    std::string_view mantissa;
    std::string_view exponent;  ///< behind the e, with its sign; empty where there is none
};

std::optional<NumberParts> partsOf(std::string_view text, char decimalSign) {
    std::string_view rest = text;
    if (rest.starts_with('-')) rest.remove_prefix(1);
    const bool whole = takeDigits(rest);
    bool decimals = false;
    if (rest.starts_with(decimalSign)) {
        rest.remove_prefix(1);
        decimals = takeDigits(rest);
        if (!decimals) return std::nullopt;
    }
    if (!whole && !decimals) return std::nullopt;
    NumberParts parts{text.substr(0, text.size() - rest.size()), {}};
    if (rest.empty()) return parts;
    if (rest.front() != 'e' && rest.front() != 'E') return std::nullopt;
    rest.remove_prefix(1);
    if (rest.starts_with('+')) rest.remove_prefix(1);
    parts.exponent = rest;
    if (rest.starts_with('-')) rest.remove_prefix(1);
    return takeDigits(rest) && rest.empty() ? std::optional{parts} : std::nullopt;
}

template <class Number>
std::optional<Number> whole(std::string_view text) {
    Number number{};
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool good = failed == std::errc{} && end == text.data() + text.size();
    return good ? std::optional{number} : std::nullopt;
}

/// The powers of ten of what tables weigh in, over a gram.
constexpr std::array<std::pair<std::string_view, int>, 8> kMassPowers{{
    {"kg", 3},
    {"g", 0},
    {"mg", -3},
    {"µg", -6},
    {"\xCE\xBCg", -6},  // with a Greek mu
    {"ug", -6},
    {"mcg", -6},
    {"ng", -9},
}};

std::optional<int> massPower(std::string_view unit) {
    const auto* const found =
        std::ranges::find(kMassPowers, unit, &std::pair<std::string_view, int>::first);
    return found == kMassPowers.end() ? std::nullopt : std::optional{found->second};
}

}  // namespace

std::optional<double> readScaledNumber(std::string_view text, char decimalSign, int powerOfTen) {
    const auto parts = partsOf(text, decimalSign);
    if (!parts) return std::nullopt;
    if (decimalSign == '.' && powerOfTen == 0) return whole<double>(text);
    const auto exponent = parts->exponent.empty() ? 0 : whole<int>(parts->exponent);
    if (!exponent || *exponent > 1000 || *exponent < -1000) return std::nullopt;
    std::string scaled{parts->mantissa};
    std::ranges::replace(scaled, decimalSign, '.');
    scaled += 'e';
    scaled += std::to_string(*exponent + powerOfTen);
    return whole<double>(scaled);
}

std::optional<int> powerOfTenBetween(std::string_view from, std::string_view to) {
    if (from == to) return 0;
    const auto a = massPower(from);
    const auto b = massPower(to);
    return a && b ? std::optional{*a - *b} : std::nullopt;
}

}  // namespace nettare
