#include "core/wording/size_words.h"

#include "core/wording/about_words.h"
#include "core/wording/read_number.h"
#include "core/wording/unit_words.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kSizes{
    "big",    "extra-large",  "huge",    "jumbo",        "large",       "large-size",   "larger",
    "little", "med",          "medium",  "medium-large", "medium-size", "medium-small", "mini",
    "small",  "small-medium", "smaller", "smallish",     "tiny",
};

/// Of a slice, a sprig, a clove; before a food they say which food it is.
constexpr WordList kSizesOfPieces{
    "fat", "good-size", "long", "plump", "short", "thick", "thin", "wide",
};

constexpr WordList kOfLengths{
    "across", "big",  "by", "cube", "deep",   "diameter", "each",  "high", "in",
    "length", "long", "or", "so",   "square", "tall",     "thick", "wide", "x",
};

std::size_t oneSizeEnd(const LineScan& scan, std::size_t i, bool ofPiece) {
    const std::string_view word = scan.word(i);
    if (scan.is(i, "extra") && (scan.is(i + 1, "large") || scan.is(i + 1, "small"))) return i + 2;
    if (scan.is(i, "little") && scan.is(i + 1, "gem")) return i;
    const bool joined = word.ends_with("-sized") || word.ends_with("-size");
    const bool named = kSizes.has(word) || joined || (ofPiece && kSizesOfPieces.has(word));
    if (!named) return i;
    return scan.is(i + 1, "sized") || scan.is(i + 1, "size") ? i + 2 : i + 1;
}

bool joinsSizes(const LineScan& scan, std::size_t i) {
    return scan.is(i, "to") || scan.is(i, "or") || scan.is(i, "/") ||
           scan.isKind(i, TokenKind::Dash) || scan.isKind(i, TokenKind::Comma);
}

}  // namespace

bool isSizeOfPiece(std::string_view lower) {
    return kSizesOfPieces.has(lower);
}

std::size_t sizeEnd(const LineScan& scan, std::size_t i, bool ofPiece) {
    std::size_t end = oneSizeEnd(scan, i, ofPiece);
    while (end != i) {
        const std::size_t next = joinsSizes(scan, end) ? end + 1 : end;
        const std::size_t more = oneSizeEnd(scan, next, ofPiece);
        if (more == next) break;
        end = more;
    }
    return end;
}

std::size_t lengthEnd(const LineScan& scan, std::size_t i) {
    const auto number = readFigures(scan, i);
    if (!number || number->grouped) return i;
    const bool hyphen = scan.isKind(number->end, TokenKind::Dash) && !scan.at(number->end).spaced;
    const std::size_t unit = hyphen ? number->end + 1 : number->end;
    const std::size_t end = lengthUnitEnd(scan, unit);
    return end == unit ? i : end;
}

std::size_t sizePhraseEnd(const LineScan& scan, std::size_t i, std::size_t limit) {
    if (scan.areAt(i, "the size of") || scan.areAt(i, "size of")) return limit;
    const std::size_t start = aboutEnd(scan, i);
    if (const std::size_t words = sizeEnd(scan, start, true); words == limit) return limit;
    std::size_t end = lengthEnd(scan, start);
    if (end == start) return i;
    while (end < limit) {
        const std::size_t further = lengthEnd(scan, end);
        if (further == end && !kOfLengths.has(scan.word(end))) return i;
        end = further == end ? end + 1 : further;
    }
    return end == limit ? limit : i;
}

}  // namespace nettare
