#include "core/publish/within_text.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr int kMostShownDecimals = 4;

/// Decimals until the number, as many times ten, is at least `least`.
int decimalsUntil(double number, double least) {
    int decimals = 0;
    for (double shown = number; shown < least && decimals < kMostShownDecimals; shown *= 10)
        ++decimals;
    return decimals;
}

constexpr std::array<std::string_view, 20> kSmall{
    "no",       "one",     "two",     "three",     "four",     "five",    "six",
    "seven",    "eight",   "nine",    "ten",       "eleven",   "twelve",  "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
constexpr std::array<std::string_view, 10> kTens{"",      "",      "twenty",  "thirty", "forty",
                                                 "fifty", "sixty", "seventy", "eighty", "ninety"};

}  // namespace

int decimalsOfWithin(double within) {
    if (!(within > 0)) return 1;
    // Of 2 to 10 there is no decimal, of 1 to 2 there is one.
    const int decimals = decimalsUntil(within, 1);
    return decimalsUntil(within, 2) == decimals ? decimals
                                                : std::min(decimals + 1, kMostShownDecimals);
}

int decimalsOfSpread(double spread) {
    return spread > 0 ? decimalsUntil(spread, 10) : 1;
}

std::string withinText(const ValueWithin& value) {
    const int decimals = decimalsOfWithin(value.within);
    return fmt::format("{} {}", numberAt(decimals, value.value),
                       halfWidthText(decimals, value.within));
}

std::string rangeText(const ValueWithin& value) {
    const int decimals = decimalsOfWithin(value.within);
    return fmt::format(
        "{} to {}", numberAt(decimals, std::max(0.0, value.value - value.within), Direction::Floor),
        numberAt(decimals, value.value + value.within, Direction::Ceiling));
}

std::string countInWords(double count) {
    if (count != std::floor(count) || count < 0 || count > 99) return shortNumber(count);
    const auto number = static_cast<std::size_t>(count);
    if (number < kSmall.size()) return std::string{kSmall[number]};
    std::string words{kTens[number / 10]};
    if (number % 10 != 0) words += fmt::format("-{}", kSmall[number % 10]);
    return words;
}

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

}  // namespace nettare
