#include "core/wording/taste_words.h"

#include <array>
#include <string_view>

namespace nettare {

namespace {

constexpr std::array<std::string_view, 6> kTastePhrases{
    "to taste", "as needed", "as required", "as necessary", "according to taste", "q.s .",
};

std::size_t wordCount(std::string_view phrase) {
    std::size_t count = 1;
    for (const char c : phrase) count += c == ' ' ? 1U : 0U;
    return count;
}

/// Where such a phrase begins that reaches to the end of the span, or its end.
std::size_t tasteAtEnd(const LineScan& scan, Span span) {
    const std::size_t longest = 3;
    const std::size_t first = span.end > span.begin + longest ? span.end - longest : span.begin;
    for (std::size_t i = first; i < span.end; ++i)
        if (tasteEnd(scan, i) == span.end) return i;
    return span.end;
}

bool joins(const LineScan& scan, std::size_t i) {
    return scan.is(i, "or") || scan.is(i, "and") || scan.isKind(i, TokenKind::Comma);
}

Span without(LineScan& scan, Span span, Span phrase, LinePartKind kind) {
    scan.give(phrase, kind);
    if (phrase.begin != span.begin) {
        Span left{span.begin, phrase.begin};
        while (!left.isEmpty() && joins(scan, left.end - 1)) --left.end;
        scan.give({left.end, phrase.begin}, kind);
        return left;
    }
    Span left{phrase.end, span.end};
    while (!left.isEmpty() && joins(scan, left.begin)) ++left.begin;
    scan.give({phrase.end, left.begin}, kind);
    return left;
}

}  // namespace

std::size_t tasteEnd(const LineScan& scan, std::size_t i) {
    if (scan.is(i, "q.s")) return scan.is(i + 1, ".") ? i + 2 : i + 1;
    for (const std::string_view phrase : kTastePhrases)
        if (scan.areAt(i, phrase)) return i + wordCount(phrase);
    return i;
}

bool saysPlusMore(const LineScan& scan, Span span) {
    for (std::size_t i = span.begin; i + 1 < span.end; ++i) {
        const bool plus =
            scan.is(i, "plus") || scan.is(i, "or") || scan.is(i, "and") || scan.is(i, "with");
        const std::size_t at = scan.is(i + 1, "a") && scan.is(i + 2, "little") ? i + 3 : i + 1;
        const bool more =
            scan.is(at, "more") ||
            (!scan.is(i, "or") && (scan.is(at, "extra") || scan.is(at, "additional")));
        if (plus && more && at < span.end) return true;
    }
    return false;
}

Span takeTaste(LineScan& scan, Span span) {
    if (saysPlusMore(scan, span)) {
        scan.reading().plusMore = true;
        return span;
    }
    std::size_t begin = span.begin;
    if (scan.is(begin, "or") || scan.is(begin, "and")) ++begin;
    Span phrase{begin, std::min(tasteEnd(scan, begin), span.end)};
    if (phrase.isEmpty()) phrase = {tasteAtEnd(scan, span), span.end};
    if (phrase.isEmpty()) return span;
    scan.reading().toTaste = true;
    if (phrase.begin == begin) phrase.begin = span.begin;
    return without(scan, span, phrase, LinePartKind::ToTaste);
}

Span takeOptional(LineScan& scan, Span span) {
    if (span.isEmpty()) return span;
    Span phrase{span.begin, span.begin};
    if (scan.is(span.begin, "optional"))
        phrase.end = span.begin + 1;
    else if (scan.is(span.end - 1, "optional"))
        phrase = {span.end - 1, span.end};
    if (phrase.isEmpty()) return span;
    scan.reading().optional = true;
    return without(scan, span, phrase, LinePartKind::Optional);
}

}  // namespace nettare
