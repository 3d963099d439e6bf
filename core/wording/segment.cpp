#include "core/wording/segment.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <string_view>

#include "core/wording/about_words.h"
#include "core/wording/preparation_words.h"
#include "core/wording/read_measure.h"
#include "core/wording/size_words.h"
#include "core/wording/taste_words.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kTurns{
    "for",        "from", "ideally", "if", "optional", "plus",
    "preferably", "q.s",  "such",    "to", "until",    "when",
};

void add(std::vector<LineMeasure>& to, std::vector<LineMeasure> measures) {
    std::ranges::move(measures, std::back_inserter(to));
}

/// "large", "about 7 cm across", "the size of a walnut".
bool takeSize(LineScan& scan, Span span) {
    if (sizePhraseEnd(scan, span.begin, span.end) != span.end) return false;
    LineReading& reading = scan.reading();
    const bool likened = scan.areAt(span.begin, "the size of") || scan.is(span.begin, "size");
    reading.assumed = reading.assumed || likened;
    scan.addTo(reading.size, span, LinePartKind::Size, ", ");
    return true;
}

/// "150 g each", "each about 150 g".
bool takeEach(LineScan& scan, Span span) {
    Span inner = span;
    if (scan.is(span.end - 1, "each") || scan.is(span.end - 1, "apiece"))
        --inner.end;
    else if (scan.is(span.begin, "each"))
        ++inner.begin;
    else
        return false;
    auto measures = measuresIn(scan, inner, false);
    if (measures.empty()) return false;
    add(scan.reading().each, std::move(measures));
    scan.give(span, LinePartKind::Each);
    return true;
}

/// Less "in total", which a measure of the whole may say of itself.
Span withoutTotal(const LineScan& scan, Span span) {
    Span inner = span;
    if (!inner.isEmpty() &&
        (scan.is(inner.end - 1, "total") || scan.is(inner.end - 1, "altogether")))
        --inner.end;
    if (!inner.isEmpty() && inner.end < span.end && scan.is(inner.end - 1, "in")) --inner.end;
    return inner;
}

/// A line that names its food first: "flour, 200 g".
bool takeLateAmount(LineScan& scan, Span span, const LineMeasure& measure) {
    LineReading& reading = scan.reading();
    const bool late = !reading.amount && !reading.amountAsked && reading.units.empty() &&
                      reading.piece.empty() && measure.counted.empty();
    if (!late) return false;
    reading.amount = measure.amount;
    reading.amountAsked = measure.asked;
    reading.units = measure.units;
    reading.about = reading.about || measure.about;
    scan.give(span, LinePartKind::Amount);
    return true;
}

/// "eggs: 3", "eggs x 2".
bool takeLateCount(LineScan& scan, Span span, SegmentPlace place) {
    const std::size_t at =
        scan.is(span.begin, "x") || scan.is(span.begin, "\u00d7") ? span.begin + 1 : span.begin;
    const auto number = readFigures(scan, at);
    if (place != SegmentPlace::Between || !number || number->end != span.end) return false;
    LineMeasure count;
    setAmount(scan, at, *number, count.amount, count.asked);
    return takeLateAmount(scan, span, count);
}

bool takeMeasures(LineScan& scan, Span span, SegmentPlace place) {
    const bool ofOne = place == SegmentPlace::BeforePiece || place == SegmentPlace::AfterPack;
    const bool about = aboutEnd(scan, span.begin) != span.begin;
    const bool counts = !ofOne && (place != SegmentPlace::Between || about);
    auto measures = measuresIn(scan, withoutTotal(scan, span), counts);
    if (measures.empty()) return false;
    if (takeLateAmount(scan, span, measures.front())) measures.erase(measures.begin());
    if (measures.empty()) return true;
    add(ofOne ? scan.reading().each : scan.reading().equals, std::move(measures));
    scan.give(span, ofOne ? LinePartKind::Each : LinePartKind::Equals);
    return true;
}

bool takeAlternative(LineScan& scan, Span span) {
    if (!scan.is(span.begin, "or") || span.begin + 1 == span.end) return false;
    if (actEnd(scan, span.begin + 1) == span.end || scan.is(span.begin + 1, "more")) return false;
    scan.give({span.begin, span.begin + 1}, LinePartKind::Alternative);
    scan.addTo(scan.reading().alternative, {span.begin + 1, span.end}, LinePartKind::Alternative,
               " or ");
    return true;
}

/// All but preparation; false where the span is none of these.
bool takeSpecial(LineScan& scan, Span span, SegmentPlace place) {
    return takeSize(scan, span) || takeEach(scan, span) || takeMeasures(scan, span, place) ||
           takeLateCount(scan, span, place) || takeAlternative(scan, span);
}

std::size_t firstParting(const LineScan& scan, Span span) {
    for (std::size_t i = span.begin; i < span.end; ++i)
        if (isParting(scan, i)) return i;
    return span.end;
}

}  // namespace

void takeSegment(LineScan& scan, Span span, SegmentPlace place) {
    while (!span.isEmpty() && isParting(scan, span.begin)) ++span.begin;
    span = takeTaste(scan, takeOptional(scan, span));
    if (span.isEmpty() || takeSpecial(scan, span, place)) return;
    // "(120 g, sifted)": what is known is taken, the remainder is read again.
    const std::size_t comma = firstParting(scan, span);
    if (comma != span.end && takeSpecial(scan, {span.begin, comma}, place)) {
        takeSegment(scan, {comma + 1, span.end}, place);
        scan.give({comma, comma + 1}, LinePartKind::Preparation);
        return;
    }
    scan.addPreparation(span);
}

std::size_t takeBracket(LineScan& scan, std::size_t open, SegmentPlace place) {
    const std::size_t close = scan.closingOf(open);
    if (open + 1 >= close) return std::min(close + 1, scan.size());
    takeSegment(scan, {open + 1, close}, place);
    scan.give({open, open + 1}, scan.at(open + 1).owner);
    scan.give({close, close + 1}, scan.at(close - 1).owner);
    return std::min(close + 1, scan.size());
}

bool isTurn(const LineScan& scan, std::size_t i) {
    if (kTurns.has(scan.word(i))) return !scan.is(i, "to") || i == 0 || !scan.is(i - 1, "ready");
    if (scan.is(i, "at")) return scan.is(i + 1, "room");
    if (scan.is(i, "as")) return tasteEnd(scan, i) != i;
    if (scan.is(i, "the")) return scan.is(i + 1, "size");
    const std::size_t about = aboutEnd(scan, i);
    return about != i && scan.isKind(about, TokenKind::Number);
}

bool isParting(const LineScan& scan, std::size_t i) {
    if (scan.isKind(i, TokenKind::Comma) || scan.is(i, ":")) return true;
    if (!scan.isKind(i, TokenKind::Dash)) return false;
    return scan.at(i).spaced || scan.written(i) == "\u2014" || scan.written(i) == "\u2013";
}

}  // namespace nettare
