#include "core/label/us_percent.h"

#include "core/label/us_daily_values.h"
#include "core/label/us_rounding.h"

namespace nettare {

namespace {

using enum DailyValueKind;

/// (c)(8)(iii): steps of 2 % up to and including 10 %, of 5 % up to and including 50 %, of 10 %
/// above.
std::int64_t percentStep(const UsDailyValue& daily, Decimal amount) {
    if (daily.kind == ReferenceValue) return 1;
    // A hundredfold on one side instead of a hundredth on the other keeps all of it whole.
    const Decimal hundredAmounts = amount.times(100);
    if (hundredAmounts <= daily.amount.times(10)) return 2;
    return hundredAmounts <= daily.amount.times(50) ? 5 : 10;
}

/// Rounded in amounts, where one percent is an exact decimal, not in percent, where it is none.
std::int64_t roundedPercent(const UsDailyValue& daily, Decimal amount) {
    const std::int64_t percents = percentStep(daily, amount);
    const Decimal step{daily.amount.coefficient() * percents, daily.amount.exponent() - 2};
    return roundedToStep(amount, step).coefficient() / step.coefficient() * percents;
}

}  // namespace

Result<std::string> usPercentText(Component component, double amountPerServing) {
    const UsDailyValue* daily = usDailyValue(component);
    if (daily == nullptr)
        return fail(
            Error{ErrorCode::ComponentUnknown}.with("component", factsOf(component).tagname));
    const auto declared = usAmountText(component, amountPerServing);
    if (!declared) return fail(declared.error());
    const Decimal amount = Decimal::fromDouble(amountPerServing);
    const bool under2 = amount.times(100) < daily->amount.times(2);
    if (*declared == "0" || (daily->kind == RecommendedIntake && under2)) return "0%";
    return std::to_string(roundedPercent(*daily, amount)) + "%";
}

}  // namespace nettare
