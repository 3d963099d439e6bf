#include "core/publish/number_text.h"

#include <fmt/core.h>

#include <algorithm>

namespace nettare {

namespace {

Decimal stepOf(int decimals) {
    return {1, -decimals};
}

/// Thousands parted by U+202F, from five digits on: groups by thin spaces, none in four digits (SI
/// Brochure, 5.4.4, from memory). It keeps a number on one line and is no decimal mark anywhere.
std::string grouped(std::string digits) {
    const std::size_t whole = std::min(digits.find('.'), digits.size());
    if (whole < 5) return digits;
    for (std::size_t at = whole; at > 3; at -= 3) digits.insert(at - 3, "\u202F");
    return digits;
}

}  // namespace

std::string numberAt(int decimals, double value, Direction direction) {
    return printedDecimal(steppedTo(Decimal::fromDouble(value), stepOf(decimals), direction));
}

std::string printedDecimal(Decimal number) {
    const std::string text = number.text();
    // What rounds to zero has no minus: a Decimal knows no -0.
    return text.starts_with('-') ? "−" + grouped(text.substr(1)) : grouped(text);
}

std::string halfWidthText(int decimals, double halfWidth) {
    Decimal shown = roundedToStep(Decimal::fromDouble(halfWidth), stepOf(decimals));
    if (halfWidth > 0 && shown.coefficient() == 0) shown = stepOf(decimals);
    return "± " + grouped(shown.text());
}

std::string figureText(const Figure& figure) {
    const ComponentFacts& facts = factsOf(figure.component);
    if (figure.complete())
        return fmt::format("{} {} {}", numberAt(facts.decimals, figure.value), facts.unit,
                           halfWidthText(facts.decimals, intervalOf(figure).halfWidth));
    std::string text = fmt::format(
        "at least {} {}", numberAt(facts.decimals, figure.atLeast, Direction::Floor), facts.unit);
    if (figure.atMost)
        text +=
            fmt::format(", at most {} {}",
                        numberAt(facts.decimals, *figure.atMost, Direction::Ceiling), facts.unit);
    return text;
}

std::string knownShareText(const Figure& figure) {
    if (figure.complete()) return {};
    return fmt::format("known for {} % of the weight",
                       numberAt(0, 100 * figure.knownShare, Direction::Floor));
}

}  // namespace nettare
