#include "core/wording/read_measure.h"

#include "core/wording/about_words.h"
#include "core/wording/preparation_words.h"
#include "core/wording/size_words.h"
#include "core/wording/unit_sums.h"
#include "core/wording/unit_words.h"

namespace nettare {

namespace {

/// The hyphen of "14-oz" stands close to the number.
std::size_t pastHyphen(const LineScan& scan, std::size_t i) {
    return scan.isKind(i, TokenKind::Dash) && !scan.at(i).spaced ? i + 1 : i;
}

/// Sticks are a unit once the food is known to be butter; settle() asks.
std::optional<MeasureRead> sticksAt(const LineScan& scan, std::size_t i) {
    const auto number = readNumber(scan, i);
    if (!number || number->article) return std::nullopt;
    if (!scan.is(number->end, "stick") && !scan.is(number->end, "sticks")) return std::nullopt;
    MeasureRead read{number->end + 1, {}};
    setAmount(scan, i, *number, read.measure.amount, read.measure.asked);
    read.measure.units = {"stick"};
    return read;
}

std::optional<MeasureRead> oneMeasureIn(const LineScan& scan, std::size_t i) {
    const std::size_t about = aboutEnd(scan, i);
    auto read = readMeasure(scan, about);
    if (!read) read = sticksAt(scan, about);
    if (read) read->measure.about = about != i;
    return read;
}

/// "about 10 medium", "2 lemons": a number and up to four plain words, to the end of the span.
std::vector<LineMeasure> countIn(const LineScan& scan, Span span) {
    const std::size_t start = aboutEnd(scan, span.begin);
    const auto number = readNumber(scan, start);
    if (!number || number->end > span.end || number->article || span.end - number->end > 4)
        return {};
    if (lengthEnd(scan, start) != start) return {};
    for (std::size_t i = number->end; i < span.end; ++i)
        if (!scan.isKind(i, TokenKind::Word) || isAct(scan.word(i)) || scan.is(i, "or") ||
            (i == number->end && scan.isGlued(i)))
            return {};
    // "(80/20)" says what the food is.
    const bool bare = number->end == span.end;
    if (bare && scan.written(start).find('/') != std::string_view::npos) return {};
    LineMeasure count;
    setAmount(scan, start, *number, count.amount, count.asked);
    count.counted = scan.textOf({number->end, span.end});
    count.about = start != span.begin;
    return {std::move(count)};
}

bool partsMeasures(const LineScan& scan, std::size_t i) {
    return scan.is(i, "/") || scan.isKind(i, TokenKind::Comma) || scan.is(i, "or");
}

}  // namespace

std::optional<MeasureRead> measureOf(const LineScan& scan, std::size_t begin,
                                     const NumberRead& number) {
    const auto unit = readUnit(scan, pastHyphen(scan, number.end));
    if (!unit) return std::nullopt;
    MeasureRead read{unit->end, {}};
    setAmount(scan, begin, number, read.measure.amount, read.measure.asked);
    read.measure.units.push_back(unit->symbol);
    if (!unit->other.empty()) read.measure.units.push_back(unit->other);
    addSums(scan, begin, read);
    if (scan.areAt(read.end, "by weight")) {
        read.end += 2;
        read.measure.units.resize(1);
    }
    return read;
}

std::optional<MeasureRead> readMeasure(const LineScan& scan, std::size_t i) {
    const auto number = readNumber(scan, i);
    if (!number || number->article || number->assumed) return std::nullopt;
    return measureOf(scan, i, *number);
}

std::vector<LineMeasure> measuresIn(const LineScan& scan, Span span, bool counts) {
    std::vector<LineMeasure> measures;
    std::size_t i = span.begin;
    while (i < span.end) {
        auto read = oneMeasureIn(scan, i);
        if (!read || read->end > span.end) break;
        measures.push_back(std::move(read->measure));
        i = read->end;
        if (i < span.end && !partsMeasures(scan, i)) break;
        if (i + 1 < span.end) ++i;
    }
    if (i == span.end) return measures;
    return measures.empty() && counts ? countIn(scan, span) : std::vector<LineMeasure>{};
}

}  // namespace nettare
