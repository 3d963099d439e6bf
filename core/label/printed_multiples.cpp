#include "core/label/printed_multiples.h"

#include "core/quantity/amount.h"

#include <algorithm>

namespace nettare {

namespace {

/// Which ends of "half a step around the printed figure" round to it.
struct IncludedEnds {
    bool low, high;
};

IncludedEnds includedEnds(Decimal printed, Decimal step, Ties ties) {
    if (ties == Ties::ToEven) {
        const bool even = roundedToStep(printed, step.times(2)) == printed;
        return {even, even};
    }
    return {ties == Ties::Up, ties == Ties::Down};
}

/// (2 printed + sign step)/(2 multiple). A fraction, since a third of a printed figure is no
/// decimal.
std::optional<Fraction> endOf(const PrintedMultiple& row, Decimal step, int sign) {
    const auto twice = row.printed.times(2).plus(step.times(sign)).fraction();
    const auto divisor = row.multiple.times(Fraction{2});
    return twice && divisor ? twice->dividedBy(*divisor) : std::nullopt;
}

/// The figures for which this row alone prints so.
Result<FractionInterval> figuresOf(const PrintedMultiple& row, Decimal step, Ties ties) {
    if (row.multiple <= Fraction{0}) return fail(ErrorCode::NotPositive);
    if (row.printed < Decimal{} || roundedToStep(row.printed, step) != row.printed)
        return fail(ErrorCode::NothingPrintsSo);
    const auto low = endOf(row, step, -1);
    const auto high = endOf(row, step, 1);
    if (!low || !high) return fail(ErrorCode::OutOfRange);
    const auto [lowIncluded, highIncluded] = includedEnds(row.printed, step, ties);
    // Below a printed 0 lies nothing; 0 itself prints so under every tie rule.
    if (*low < Fraction{0}) return FractionInterval{Fraction{0}, *high, true, highIncluded};
    return FractionInterval{*low, *high, lowIncluded, highIncluded};
}

/// Leaves what both hold; a common end stays only where both include it.
void narrow(FractionInterval& interval, const FractionInterval& other) {
    if (other.low > interval.low) {
        interval.low = other.low;
        interval.lowIncluded = other.lowIncluded;
    } else if (other.low == interval.low) {
        interval.lowIncluded = interval.lowIncluded && other.lowIncluded;
    }
    if (other.high < interval.high) {
        interval.high = other.high;
        interval.highIncluded = other.highIncluded;
    } else if (other.high == interval.high) {
        interval.highIncluded = interval.highIncluded && other.highIncluded;
    }
}

bool holdsNothing(const FractionInterval& interval) {
    return interval.high < interval.low ||
           (interval.high == interval.low && !(interval.lowIncluded && interval.highIncluded));
}

Error about(const Error& error, const PrintedMultiple& row) {
    return error.with("multiple", writeFraction(row.multiple)).with("printed", row.printed.text());
}

}  // namespace

bool FractionInterval::contains(Fraction value) const {
    return (lowIncluded ? value >= low : value > low) &&
           (highIncluded ? value <= high : value < high);
}

Result<FractionInterval> figuresPrintedSo(std::span<const PrintedMultiple> multiples, Decimal step,
                                          Ties ties) {
    if (multiples.empty()) return fail(ErrorCode::TooFewItems);
    if (step <= Decimal{}) return fail(Error{ErrorCode::NotPositive}.with("step", step.text()));
    std::optional<FractionInterval> all;
    for (const PrintedMultiple& row : multiples) {
        const auto figures = figuresOf(row, step, ties);
        if (!figures) return fail(about(figures.error(), row));
        if (all)
            narrow(*all, *figures);
        else
            all = *figures;
        if (holdsNothing(*all)) return fail(about(Error{ErrorCode::NothingPrintsSo}, row));
    }
    return *all;
}

}  // namespace nettare
