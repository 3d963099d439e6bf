#include "core/label/us_serving.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace nettare {

namespace {

using enum PrintKind;

/// Other names than in us_rounding.cpp: unity files put both into one namespace.
constexpr Decimal kNothing{};
constexpr Decimal kUnit{1, 0};
constexpr Decimal kHalfUnit{5, -1};
constexpr Decimal kTwo{2, 0};
constexpr Decimal kUpperBand{5, 0};

/// (b)(7); the steps below 5 are from memory.
constexpr std::array kMetricPart{
    PrintBand{Nearest, Decimal{1, -1}, kNothing, true, kTwo, false},
    PrintBand{Nearest, kHalfUnit, kTwo, true, kUpperBand, false},
    PrintBand{Nearest, kUnit, kUpperBand, true, std::nullopt, false},
};

/// (b)(8)(i): 2 and 5 themselves print the same under both of their steps.
constexpr std::array kServings{
    PrintBand{Nearest, kUnit, kNothing, true, kTwo, false},
    PrintBand{Nearest, kHalfUnit, kTwo, true, kUpperBand, true},
    PrintBand{Nearest, kUnit, kUpperBand, false, std::nullopt, false},
};

/// The size with twelve digits, or why a panel cannot give it.
Result<Decimal> servingSize(double amount) {
    const Error error = Error{ErrorCode::OutOfRange}.with("found", fmt::format("{}", amount));
    if (!std::isfinite(amount) || amount > 1e9) return fail(error);
    const Decimal exact = Decimal::fromDouble(amount);
    if (exact <= Decimal{})
        return fail(Error{ErrorCode::NotPositive}.with("found", fmt::format("{}", amount)));
    return exact;
}

/// A serving that would print as 0 is refused: the rule has no floor for it.
Result<PrintedAmount> printedSize(PrintRule rule, Decimal exact) {
    const auto printed = printedUnder(rule, exact);
    if (!printed || printed->figure == Decimal{})
        return fail(Error{ErrorCode::NotPositive}.with("found", exact.text()));
    return *printed;
}

}  // namespace

PrintRule usServingMetricRule() {
    return kMetricPart;
}

Result<std::string> usServingMetricText(double gramsOrMillilitres) {
    const auto exact = servingSize(gramsOrMillilitres);
    if (!exact) return fail(exact.error());
    const auto printed = printedSize(kMetricPart, *exact);
    if (!printed) return fail(printed.error());
    return printed->text();
}

Result<std::string> usServingsText(double servings) {
    const auto exact = servingSize(servings);
    if (!exact) return fail(exact.error());
    const auto printed = printedSize(kServings, *exact);
    if (!printed) return fail(printed.error());
    return (printed->figure == *exact ? "" : "about ") + printed->text();
}

}  // namespace nettare
