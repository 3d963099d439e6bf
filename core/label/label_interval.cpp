#include "core/label/label_interval.h"

#include <algorithm>

#include "core/label/eu_printed_interval.h"
#include "core/label/label_lines.h"
#include "core/label/read_printed.h"
#include "core/label/us_printed_interval.h"
#include "core/label/us_serving.h"

namespace nettare {

namespace {

bool isAsPrinted(const LabelFacts& label, const LabelAmount& amount) {
    return std::ranges::find(label.assents,
                             LabelAssent{LabelFindingKind::NotLawful, notLawfulAbout(amount)}) !=
           label.assents.end();
}

Error ofLine(ErrorCode code, const LabelLine& line, std::string_view printed) {
    return Error{code}.with("found", printed).with("component", tagnameOf(line));
}

}  // namespace

DecimalInterval asWritten(const PrintedAmount& printed) {
    if (printed.lessThan) return {Decimal{}, printed.figure, true, false};
    return halfUnitAround(printed.figure, lastDigitOf(printed.figure));
}

std::optional<DecimalInterval> amountsPrintedAs(LabelRules rules, const LabelLine& line,
                                                const PrintedAmount& printed) {
    if (rules == LabelRules::Eu) return euAmountsPrintedAs(line, printed);
    // Sugar alcohol has the steps of the other carbohydrates: 21 CFR 101.9(c)(6)(iv).
    const Component component = componentOf(line).value_or(Component::SUGAR);
    if (const auto rule = usAmountRule(component)) return usAmountsPrintedAs(*rule, printed);
    return asWritten(printed);
}

Result<DecimalInterval> printedInterval(LabelRules rules, const LabelLine& line,
                                        std::string_view printed) {
    if (printedLine(rules, line) == nullptr)
        return fail(ofLine(ErrorCode::ComponentUnknown, line, printed));
    const auto amount = readPrinted(printed, unitOf(line));
    if (!amount) return fail(ofLine(ErrorCode::LabelAmountUnreadable, line, printed));
    const auto interval = amountsPrintedAs(rules, line, *amount);
    if (!interval) return fail(ofLine(ErrorCode::LabelAmountImpossible, line, printed));
    return *interval;
}

Result<DecimalInterval> labelInterval(const LabelFacts& label, const LabelAmount& amount) {
    auto interval = printedInterval(label.rules, amount.line, amount.printed);
    if (interval || interval.error().code != ErrorCode::LabelAmountImpossible ||
        !isAsPrinted(label, amount))
        return interval;
    const auto printed = readPrinted(amount.printed, unitOf(amount.line));
    return printed ? asWritten(*printed) : interval;
}

double printedFigure(const LabelAmount& amount, const DecimalInterval& interval) {
    const double middle = interval.closed().middle();
    const auto read = readPrinted(amount.printed, unitOf(amount.line));
    return read && !read->lessThan ? read->figure.value() : middle;
}

DecimalInterval servingInterval(LabelRules rules, Decimal printed) {
    return rules == LabelRules::Us ? servingGramsInterval(printed)
                                   : halfUnitAround(printed, lastDigitOf(printed));
}

std::string notLawfulAbout(const LabelAmount& amount) {
    return std::string{tagnameOf(amount.line)} + " " + amount.printed;
}

}  // namespace nettare
