#include "core/label/eu_printed_interval.h"

#include <algorithm>

#include "core/label/eu_rounding.h"
#include "core/label/label_interval.h"

namespace nettare {

namespace {

/// The step of that many significant figures where the figure is their last one: 10 for 1230, 0.1
/// for 12.3, with three.
Decimal significantStep(Decimal figure, int figures) {
    int digits = 0;
    for (std::int64_t rest = figure.coefficient(); rest > 0; rest /= 10) ++digits;
    return {1, figure.exponent() + digits - figures};
}

/// Below a power of ten the step is a tenth of that above: 100 stands for 99.95 to 100.5.
DecimalInterval bySignificantFigures(Decimal figure, int figures) {
    const Decimal step = significantStep(figure, figures);
    DecimalInterval around = halfUnitAround(figure, step);
    const Decimal finer{1, step.exponent() - 1};
    const Decimal below = figure.minus(finer);
    if (significantStep(below, figures) == finer) around.low = halfUnitAround(figure, finer).low;
    return around;
}

}  // namespace

DecimalInterval euAmountsPrintedAs(const LabelLine& line, const PrintedAmount& printed) {
    if (const auto rule = euAmountRule(line))
        if (const auto interval = amountsPrintedAs(*rule, printed)) return *interval;
    DecimalInterval interval = asWritten(printed);
    const auto figures = euSignificantFigures(line);
    if (!figures || printed.lessThan || printed.figure == Decimal{}) return interval;
    if (roundedToStep(printed.figure, significantStep(printed.figure, *figures)) != printed.figure)
        return interval;
    const DecimalInterval significant = bySignificantFigures(printed.figure, *figures);
    interval.low = std::min(interval.low, significant.low);
    interval.high = std::max(interval.high, significant.high);
    return interval;
}

}  // namespace nettare
