#include "core/label/us_printed_interval.h"

#include "core/label/read_printed.h"
#include "core/label/us_rounding.h"
#include "core/label/us_serving.h"

#include <algorithm>

namespace nettare {

namespace {

/// For vitamins and minerals; a recommended rule is one band, and has no "less than".
std::optional<DecimalInterval> recommendedInterval(const UsAmountRule& rule,
                                                   const PrintedAmount& printed) {
    if (printed.lessThan) return std::nullopt;
    const DecimalInterval around = halfUnitAround(
        printed.figure, std::max(rule.bands.front().figure, lastDigitOf(printed.figure)));
    const bool mayBeMore =
        printed.figure == Decimal{} && rule.zeroBelow && *rule.zeroBelow > around.high;
    return mayBeMore ? DecimalInterval{Decimal{}, *rule.zeroBelow, true, false} : around;
}

}  // namespace

std::optional<DecimalInterval> usAmountsPrintedAs(const UsAmountRule& rule,
                                                  const PrintedAmount& printed) {
    return rule.recommended ? recommendedInterval(rule, printed)
                            : amountsPrintedAs(rule.bands, printed);
}

Result<DecimalInterval> usPrintedInterval(Component component, std::string_view printed) {
    const auto refuse = [&](ErrorCode code) {
        return fail(
            Error{code}.with("found", printed).with("component", factsOf(component).tagname));
    };
    const auto rule = usAmountRule(component);
    if (!rule) return refuse(ErrorCode::ComponentUnknown);
    const auto amount = readPrinted(printed, factsOf(component).unit);
    if (!amount) return refuse(ErrorCode::LabelAmountUnreadable);
    const auto interval = usAmountsPrintedAs(*rule, *amount);
    if (!interval) return refuse(ErrorCode::LabelAmountImpossible);
    return *interval;
}

DecimalInterval servingGramsInterval(Decimal printedGrams) {
    const auto lawful = amountsPrintedAs(usServingMetricRule(), PrintedAmount{false, printedGrams});
    return lawful ? *lawful : halfUnitAround(printedGrams, lastDigitOf(printedGrams));
}

}  // namespace nettare
