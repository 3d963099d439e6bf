#include "core/label/label_interval.h"

#include <algorithm>

#include "core/label/eu_printed_interval.h"
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

Result<DecimalInterval> printedInterval(LabelRules rules, const LabelLine& line,
                                        std::string_view printed) {
    if (rules == LabelRules::Eu) return euPrintedInterval(line, printed);
    if (const auto component = componentOf(line)) return usPrintedInterval(*component, printed);
    return line == LabelLine{LabelOnly::POLYL}
               ? usPrintedInterval(Component::SUGAR, printed)
               : Result<DecimalInterval>{fail(ofLine(ErrorCode::ComponentUnknown, line, printed))};
}

Result<DecimalInterval> labelInterval(const LabelFacts& label, const LabelAmount& amount) {
    auto interval = printedInterval(label.rules, amount.line, amount.printed);
    if (interval || interval.error().code != ErrorCode::LabelAmountImpossible ||
        !isAsPrinted(label, amount))
        return interval;
    const auto printed = readPrinted(amount.printed, unitOf(amount.line));
    if (!printed) return interval;
    if (printed->lessThan) return DecimalInterval{Decimal{}, printed->figure, true, false};
    return halfUnitAround(printed->figure, lastDigitOf(printed->figure));
}

double printedFigure(std::string_view printed, const DecimalInterval& interval) {
    const double middle = interval.closed().middle();
    const auto read = readPrinted(printed, {});
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
