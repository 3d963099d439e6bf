#include "core/label/us_serving.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace nettare {

namespace {

using enum PrintKind;

constexpr Decimal kNothing{};
constexpr Decimal kUnit{1, 0};
constexpr Decimal kHalfUnit{5, -1};
constexpr Decimal kTwo{2, 0};
constexpr Decimal kUpperBand{5, 0};

constexpr std::array kMetricPart{
    PrintBand{Nearest, Decimal{1, -1}, kNothing, true, kTwo, false},
    PrintBand{Nearest, kHalfUnit, kTwo, true, kUpperBand, false},
    PrintBand{Nearest, kUnit, kUpperBand, true, std::nullopt, false},
};

constexpr std::array kServings{
    PrintBand{Nearest, kUnit, kNothing, true, kTwo, false},
    PrintBand{Nearest, kHalfUnit, kTwo, true, kUpperBand, true},
    PrintBand{Nearest, kUnit, kUpperBand, false, std::nullopt, false},
};

Result<Decimal> servingSize(double amount) {
    const Error error = Error{ErrorCode::OutOfRange}.with("found", fmt::format("{}", amount));
    if (!std::isfinite(amount) || amount > 1e9) return fail(error);
    const Decimal exact = Decimal::fromDouble(amount);
    if (exact <= Decimal{})
        return fail(Error{ErrorCode::NotPositive}.with("found", fmt::format("{}", amount)));
    return exact;
}

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
