#include "core/label/us_printed_interval.h"

#include "core/label/us_rounding.h"
#include "core/label/us_serving.h"
#include "core/support/text.h"

#include <algorithm>
#include <string>

namespace nettare {

namespace {

constexpr std::string_view kDigits = "0123456789";

/// 0.1 for "2.5", 1 for "20": a zero before the point counts as a digit that was printed.
Decimal lastDigitOf(Decimal figure) {
    return {1, -figure.decimals()};
}

/// "1,200" as "1200"; nothing where the commas do not part groups of three.
std::optional<std::string> withoutGroups(std::string_view figure) {
    const std::size_t whole = std::min(figure.find('.'), figure.size());
    const auto groups = split(figure.substr(0, whole), ',');
    const std::string_view first = groups.front();
    const bool opens = !first.empty() && first.size() <= 3 && first.front() != '0';
    if (groups.size() > 1 && !opens) return std::nullopt;
    for (std::size_t i = 1; i < groups.size(); ++i)
        if (groups[i].size() != 3) return std::nullopt;
    return replaced(figure.substr(0, whole), ",", "") + std::string{figure.substr(whole)};
}

/// The figure in front of the component's unit or of nothing. Any other unit stays, and makes the
/// text unreadable.
std::string_view withoutUnit(std::string_view text, Component component) {
    const std::size_t unitAt = text.find_last_of(kDigits) + 1;
    const std::string_view unit = trimmed(text.substr(unitAt));
    const std::string_view own = factsOf(component).unit;
    const bool micrograms = own == "µg" && (unit == "mcg" || unit == "µg");
    return unit == own || micrograms ? text.substr(0, unitAt) : text;
}

/// Any case, as packs print it. No label declares less than nothing.
std::optional<PrintedAmount> readPrinted(std::string_view printed, Component component) {
    const std::string lower = lowerAscii(trimmed(printed));
    std::string_view text = lower;
    bool lessThan = false;
    for (const std::string_view opening : {"contains less than ", "less than ", "<"}) {
        if (!text.starts_with(opening)) continue;
        lessThan = true;
        text = trimmed(text.substr(opening.size()));
        break;
    }
    const auto plain = withoutGroups(withoutUnit(text, component));
    const auto figure = plain ? Decimal::read(*plain) : std::nullopt;
    if (!figure || plain->front() == '-') return std::nullopt;
    return PrintedAmount{lessThan, *figure};
}

/// For vitamins and minerals; a recommended rule is one band, and has no "less than".
std::optional<DecimalInterval> recommendedInterval(PrintRule bands, const PrintedAmount& printed) {
    if (printed.lessThan) return std::nullopt;
    return halfUnitAround(printed.figure,
                          std::max(bands.front().figure, lastDigitOf(printed.figure)));
}

}  // namespace

Result<DecimalInterval> usPrintedInterval(Component component, std::string_view printed) {
    const auto refuse = [&](ErrorCode code) {
        return fail(
            Error{code}.with("found", printed).with("component", factsOf(component).tagname));
    };
    const auto rule = usAmountRule(component);
    if (!rule) return refuse(ErrorCode::ComponentUnknown);
    const auto amount = readPrinted(printed, component);
    if (!amount) return refuse(ErrorCode::LabelAmountUnreadable);
    const auto interval = rule->recommended ? recommendedInterval(rule->bands, *amount)
                                            : amountsPrintedAs(rule->bands, *amount);
    if (!interval) return refuse(ErrorCode::LabelAmountImpossible);
    return *interval;
}

DecimalInterval servingGramsInterval(Decimal printedGrams) {
    const auto lawful = amountsPrintedAs(usServingMetricRule(), PrintedAmount{false, printedGrams});
    return lawful ? *lawful : halfUnitAround(printedGrams, lastDigitOf(printedGrams));
}

}  // namespace nettare
