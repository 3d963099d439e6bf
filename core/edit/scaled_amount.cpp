#include "core/edit/scaled_amount.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/kitchen_fraction.h"

namespace nettare {

namespace {

constexpr int kMoreDigits = 3;
constexpr int kMostDecimals = 6;  // of an amount

/// Significant digits of an end as a decimal: 1 of "3", 2 of "1 1/2", 3 of "400".
int digitsOf(Fraction end) {
    std::string text = Decimal::fromDouble(end.value()).text();
    if (text.find('.') != std::string::npos) text.erase(text.find_last_not_of('0') + 1);
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const auto first = std::ranges::find_if(text, [](char c) { return c >= '1' && c <= '9'; });
    // A third has as many as is sensible.
    return std::min(static_cast<int>(std::count_if(first, text.end(), isDigit)), kMoreDigits);
}

/// Without zeros at the end; but "2.125" could group thousands and stays "2.1250".
std::string decimalText(std::string text) {
    const std::size_t point = text.find('.');
    if (point == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    if (text.size() == point + 4 && text.front() != '0') text += '0';
    return text;
}

std::string kitchenText(double value) {
    const auto kitchen = kitchenFraction(value, KitchenTool::Any);
    return kitchen && kitchen->relativeError == 0 ? kitchen->text() : std::string{};
}

std::string scaledEnd(Fraction end, double factor, AmountForm form, Direction direction) {
    const double value = end.value() * factor;
    if (form == AmountForm::Kitchen)
        if (auto text = kitchenText(value); !text.empty()) return text;
    const int magnitude = static_cast<int>(std::floor(std::log10(value)));
    const int last = std::clamp(magnitude + 1 - digitsOf(end) - kMoreDigits, -kMostDecimals, 0);
    const Decimal step{1, last};
    Decimal rounded = steppedTo(Decimal::fromDouble(value), step, direction);
    if (rounded.coefficient() == 0) rounded = step;
    if (form == AmountForm::Kitchen)
        if (auto text = kitchenText(rounded.value()); !text.empty()) return text;
    return decimalText(rounded.text());
}

}  // namespace

std::string scaledAmount(const Amount& amount, double factor, AmountForm form,
                         Direction direction) {
    std::string low = scaledEnd(amount.low(), factor, form, direction);
    if (!amount.isRange()) return low;
    const std::string high = scaledEnd(amount.high(), factor, form, direction);
    return low == high ? low : low + "-" + high;
}

}  // namespace nettare
