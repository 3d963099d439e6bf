#include "core/label/eu_printed_interval.h"

#include "core/label/eu_rounding.h"
#include "core/label/read_printed.h"

namespace nettare {

Result<DecimalInterval> euPrintedInterval(const LabelLine& line, std::string_view printed) {
    const auto refuse = [&](ErrorCode code) {
        return fail(Error{code}.with("found", printed).with("component", tagnameOf(line)));
    };
    const auto amount = readPrinted(printed, unitOf(line));
    if (!amount) return refuse(ErrorCode::LabelAmountUnreadable);
    if (const auto rule = euAmountRule(line))
        if (const auto interval = amountsPrintedAs(*rule, *amount)) return *interval;
    if (amount->lessThan) return DecimalInterval{Decimal{}, amount->figure, true, false};
    return halfUnitAround(amount->figure, lastDigitOf(amount->figure));
}

}  // namespace nettare
