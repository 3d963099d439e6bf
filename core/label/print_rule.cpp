#include "core/label/print_rule.h"

#include <algorithm>

namespace nettare {

namespace {

/// The amounts that the band speaks of, up to an end that also a band without one has.
DecimalInterval rangeOf(const PrintBand& band, Decimal noHigherThan) {
    const Decimal high = band.to ? std::min(*band.to, noHigherThan) : noHigherThan;
    return {band.from, high, band.fromIncluded, !band.to || *band.to > high || band.toIncluded};
}

/// The amounts for which this band alone prints so.
std::optional<DecimalInterval> amountsOfBand(const PrintBand& band, const PrintedAmount& printed) {
    DecimalInterval amounts;
    if (band.kind == PrintKind::Nearest) {
        const bool multiple = roundedToStep(printed.figure, band.figure) == printed.figure;
        // 0 is a multiple of every step, and no figure of a band that begins above it.
        const bool belowFloor = printed.figure == Decimal{} && band.from > Decimal{};
        if (printed.lessThan || !multiple || belowFloor) return std::nullopt;
        const DecimalInterval around = halfUnitAround(printed.figure, band.figure);
        amounts = intersection(around, rangeOf(band, around.high));
    } else {
        if (printed.lessThan != (band.kind == PrintKind::LessThan) ||
            printed.figure != band.figure || !band.to)
            return std::nullopt;
        amounts = rangeOf(band, *band.to);
    }
    return amounts.empty() ? std::nullopt : std::optional{amounts};
}

/// The smallest interval that holds both.
DecimalInterval spanOf(const DecimalInterval& a, const DecimalInterval& b) {
    DecimalInterval both = a;
    if (b.low < a.low || (b.low == a.low && b.lowIncluded)) {
        both.low = b.low;
        both.lowIncluded = b.lowIncluded;
    }
    if (b.high > a.high || (b.high == a.high && b.highIncluded)) {
        both.high = b.high;
        both.highIncluded = b.highIncluded;
    }
    return both;
}

}  // namespace

bool PrintBand::holds(Decimal amount) const {
    const bool above = fromIncluded ? amount >= from : amount > from;
    return above && (!to || (toIncluded ? amount <= *to : amount < *to));
}

std::string PrintedAmount::text() const {
    const std::string number = withoutTrailingZeros(figure).text();
    return lessThan ? "less than " + number : number;
}

std::optional<PrintedAmount> printedUnder(PrintRule rule, Decimal amount) {
    for (const PrintBand& band : rule) {
        if (!band.holds(amount)) continue;
        if (band.kind == PrintKind::Nearest)
            return PrintedAmount{false, roundedToStep(amount, band.figure)};
        return PrintedAmount{band.kind == PrintKind::LessThan, band.figure};
    }
    return std::nullopt;
}

std::optional<DecimalInterval> amountsPrintedAs(PrintRule rule, const PrintedAmount& printed) {
    std::optional<DecimalInterval> all;
    for (const PrintBand& band : rule) {
        const auto amounts = amountsOfBand(band, printed);
        if (amounts) all = all ? spanOf(*all, *amounts) : *amounts;
    }
    return all;
}

DecimalInterval halfUnitAround(Decimal figure, Decimal unit) {
    // Exact for every decimal: five times, one place further down.
    const Decimal half = Decimal{unit.coefficient() * 5, unit.exponent() - 1};
    return {std::max(figure.minus(half), Decimal{}), figure.plus(half)};
}

Decimal withoutTrailingZeros(Decimal value) {
    std::int64_t coefficient = value.coefficient();
    int exponent = value.exponent();
    while (exponent < 0 && coefficient % 10 == 0) {
        coefficient /= 10;
        ++exponent;
    }
    return {coefficient, exponent};
}

}  // namespace nettare
