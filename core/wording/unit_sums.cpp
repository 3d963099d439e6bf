#include "core/wording/unit_sums.h"

#include "core/wording/unit_names.h"

namespace nettare {

namespace {

struct NextMeasure {
    std::size_t end;
    NumberRead number;
    UnitRead unit;
};

std::optional<NextMeasure> nextMeasure(const LineScan& scan, std::size_t i) {
    const auto number = readNumber(scan, i);
    if (!number || number->article || number->grouped) return std::nullopt;
    const auto unit = readUnit(scan, number->end);
    if (!unit) return std::nullopt;
    return NextMeasure{unit->end, *number, *unit};
}

/// "plus", "and", "+", "&", and a comma before them.
std::size_t plusEnd(const LineScan& scan, std::size_t i) {
    const std::size_t at = scan.is(i, ",") ? i + 1 : i;
    const bool plus =
        scan.is(at, "plus") || scan.is(at, "and") || scan.is(at, "+") || scan.is(at, "&");
    return plus ? at + 1 : i;
}

/// How many of the first unit one of the second is, where both are of one kind.
std::optional<Fraction> ratio(std::string_view of, std::string_view in) {
    const UnitScale* small = unitScale(of);
    const UnitScale* large = unitScale(in);
    if (small == nullptr || large == nullptr || small->kind != large->kind) return std::nullopt;
    return Fraction::make(small->numerator * large->denominator,
                          small->denominator * large->numerator);
}

bool isSmaller(std::string_view of, std::string_view in) {
    const auto share = ratio(of, in);
    return share && *share < Fraction{1};
}

void replaceAmount(const LineScan& scan, std::size_t begin, std::size_t end, Fraction low,
                   Fraction high, MeasureRead& read) {
    read.end = end;
    read.measure.amount = Amount{low, high, scan.textOf({begin, end})};
}

bool addedTo(const LineScan& scan, std::size_t begin, const NextMeasure& next, MeasureRead& read) {
    const auto share = ratio(next.unit.symbol, read.measure.units.front());
    if (!share) return false;
    const auto low = next.number.low.times(*share);
    const auto high = next.number.high.times(*share);
    if (!low || !high) return false;
    const auto from = read.measure.amount->low().plus(*low);
    const auto to = read.measure.amount->high().plus(*high);
    if (!from || !to) return false;
    replaceAmount(scan, begin, next.end, *from, *to, read);
    return true;
}

bool addSum(const LineScan& scan, std::size_t begin, MeasureRead& read) {
    const std::size_t at = plusEnd(scan, read.end);
    const auto next = nextMeasure(scan, at);
    if (!next) return false;
    const std::string_view first = read.measure.units.front();
    // Without a "plus" only the smaller of two units adds up: "1 lb 4 oz".
    if (at == read.end && !isSmaller(next->unit.symbol, first)) return false;
    return addedTo(scan, begin, *next, read);
}

bool addRange(const LineScan& scan, std::size_t begin, MeasureRead& read) {
    const bool parts = scan.is(read.end, "to") || scan.isKind(read.end, TokenKind::Dash);
    const auto next = parts ? nextMeasure(scan, read.end + 1) : std::nullopt;
    const Amount& first = *read.measure.amount;
    if (!next || first.isRange() || next->unit.symbol != read.measure.units.front()) return false;
    if (next->number.high < first.low()) return false;
    replaceAmount(scan, begin, next->end, first.low(), next->number.high, read);
    return true;
}

}  // namespace

void addSums(const LineScan& scan, std::size_t begin, MeasureRead& read) {
    if (!read.measure.amount) return;
    if (addRange(scan, begin, read)) return;
    while (addSum(scan, begin, read)) {
        // An ounce beside a pound is one of weight, whichever came first.
        read.measure.units.resize(1);
    }
}

}  // namespace nettare
