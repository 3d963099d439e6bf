#include "core/label/label_refusal.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/label/check_label_numbers.h"
#include "core/label/label_interval.h"
#include "core/support/json.h"

namespace nettare {

namespace {

constexpr double kHundredGrams = 100;
constexpr std::string_view kStatedPlace = "/added_sugars/per_100g";

/// The most sugars of 100 g; nothing where neither sugars nor carbohydrate say.
std::optional<double> mostSugars(const LabelFacts& label) {
    const LabelNumbers numbers = labelNumbers(label);
    const auto& printed = numbers[CheckedLine::Sugars] ? numbers[CheckedLine::Sugars]
                                                       : numbers[CheckedLine::Carbohydrate];
    if (!printed || !numbers.grams || numbers.grams->low <= 0) return std::nullopt;
    const double spread = label.declarationSpread.value_or(Decimal{}).value();
    const double most = printed->high * (1 + spread) * kHundredGrams / numbers.grams->low;
    return std::min(most, kHundredGrams);
}

}  // namespace

std::optional<Error> labelRefusal(const LabelFacts& label) {
    for (std::size_t i = 0; i < label.amounts.size(); ++i) {
        const LabelAmount& amount = label.amounts[i];
        const std::string place = pointerTo("/declares", i);
        const auto interval = labelInterval(label, amount);
        if (interval || interval.error().code == ErrorCode::LabelAmountImpossible) continue;
        if (interval.error().code == ErrorCode::ComponentUnknown)
            return Error{ErrorCode::ComponentUnknown}
                .with("found", tagnameOf(amount.line))
                .at(place + "/component");
        return Error{interval.error().code}
            .with("found", amount.printed)
            .with("component", nameOf(amount.line))
            .at(place + "/printed");
    }
    return std::nullopt;
}

std::optional<Error> addedSugarsRefusal(const LabelFacts& label, const AddedSugars& added) {
    if (added.kind != AddedSugarKind::Stated) return std::nullopt;
    const Decimal stated = Decimal::fromDouble(added.statedPer100g);
    if (stated.value() > kHundredGrams)
        return Error{ErrorCode::OutOfRange}
            .with("found", stated.text())
            .with("low", "0")
            .with("high", "100")
            .at(kStatedPlace);
    if (label.printed(Component::SUGAD) != nullptr) return std::nullopt;
    const auto most = mostSugars(label);
    const double halfDigit = Decimal{5, -stated.decimals() - 1}.value();
    if (!most || stated.value() - halfDigit <= *most) return std::nullopt;
    return Error{ErrorCode::AddedSugarsAboveSugars}
        .with("found", stated.text())
        .with("most", fmt::format("{:.3g}", *most))
        .at(kStatedPlace);
}

}  // namespace nettare
