#include "core/wording/about_words.h"

#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kAbout{
    "about", "almost", "approx",  "approximately", "around", "c",      "ca",
    "circa", "nearly", "roughly", "some",          "~",      "\u2248",
};

/// Several words, tried one by one: there are few.
constexpr std::array<std::string_view, 6> kAboutPhrases{
    "up to", "just under", "just over", "a little under", "a little over", "a bit more than",
};

struct FillWord {
    std::string_view word, fill;
};

constexpr WordTable kFills{
    FillWord{"generous", "generous"}, FillWord{"good", "generous"},   FillWord{"heaped", "heaping"},
    FillWord{"heaping", "heaping"},   FillWord{"level", "level"},     FillWord{"leveled", "level"},
    FillWord{"levelled", "level"},    FillWord{"rounded", "rounded"}, FillWord{"scant", "scant"},
};

std::size_t wordsIn(std::string_view phrase) {
    return 1 + static_cast<std::size_t>(std::ranges::count(phrase, ' '));
}

}  // namespace

std::size_t aboutEnd(const LineScan& scan, std::size_t i) {
    if (scan.is(i, "up") || scan.is(i, "just") || scan.is(i, "a"))
        for (const std::string_view phrase : kAboutPhrases)
            if (scan.areAt(i, phrase)) return i + wordsIn(phrase);
    if (!kAbout.has(scan.word(i))) return i;
    const bool point = scan.is(i + 1, ".") && scan.isGlued(i + 1);
    const std::size_t end = point ? i + 2 : i + 1;
    // "c" and "some" say so before a figure only.
    const bool needsFigure = scan.is(i, "c") || scan.is(i, "some");
    return needsFigure && !scan.isKind(end, TokenKind::Number) ? i : end;
}

std::string_view fillOf(std::string_view lower) {
    const FillWord* row = kFills.rowOf(lower);
    return row == nullptr ? std::string_view{} : row->fill;
}

}  // namespace nettare
