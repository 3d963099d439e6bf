#include "core/wording/alternative.h"

#include "core/wording/preparation_words.h"
#include "core/wording/read_number.h"
#include "core/wording/segment.h"
#include "core/wording/size_words.h"
#include "core/wording/taste_words.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

/// Common practice.
constexpr WordList kSharedNouns{
    "bean",    "beans",   "beer",   "berries", "bouillon", "bread",   "breast",  "breasts",
    "broth",   "cabbage", "cheese", "chop",    "chops",    "extract", "fat",     "fillet",
    "fillets", "flakes",  "flour",  "jam",     "jelly",    "juice",   "leaves",  "lentils",
    "liqueur", "meal",    "meat",   "milk",    "mince",    "mustard", "oil",     "onion",
    "onions",  "paste",   "peel",   "powder",  "salt",     "sauce",   "sausage", "seeds",
    "stock",   "sugar",   "syrup",  "vinegar", "wine",     "zest",
};

constexpr WordList kAlone{
    "broth",    "butter", "buttermilk", "cornstarch", "cream",      "creme",
    "dripping", "eggs",   "flour",      "ghee",       "ham",        "honey",
    "ketchup",  "lard",   "leeks",      "margarine",  "mayonnaise", "milk",
    "onions",   "salt",   "scallions",  "shallots",   "shortening", "stock",
    "sugar",    "tamari", "vinegar",    "water",      "wine",       "yogurt",
};

std::size_t endOfStretch(const LineScan& scan, std::size_t i) {
    while (i < scan.size() && !isParting(scan, i) && !scan.isKind(i, TokenKind::Open) &&
           !scan.isKind(i, TokenKind::Close) && !isTurn(scan, i))
        ++i;
    return i;
}

/// The words of the alternative that the food before "or" shares; empty where it shares none.
Span sharedWords(const LineScan& scan, Span food, Span other, bool onlyAdjectives) {
    const bool plain = scan.isKind(other.begin, TokenKind::Word) &&
                       !readNumber(scan, other.begin) && other.end - other.begin > 1;
    if (!plain || food.isEmpty()) return {0, 0};
    const std::string_view last = scan.word(food.end - 1);
    const std::string_view noun = scan.word(other.end - 1);
    const bool likewise =
        isAdjective(scan.word(other.begin)) || sizeEnd(scan, other.begin, true) != other.begin;
    if (onlyAdjectives && likewise) return {other.begin + 1, other.end};
    if (onlyAdjectives) return {other.end - 1, other.end};
    const bool shares = isSharedNoun(noun) && !standsAlone(last) && !isSharedNoun(last);
    return shares ? Span{other.end - 1, other.end} : Span{0, 0};
}

/// "1 medium or 2 small onions": the food is still to come.
std::size_t beforeFood(LineScan& scan, std::size_t i) {
    const auto number = readNumber(scan, i + 1);
    if (!number) return i;
    const std::size_t end = sizeEnd(scan, number->end, true);
    scan.give({i, i + 1}, LinePartKind::Alternative);
    scan.addTo(scan.reading().alternative, {i + 1, end}, LinePartKind::Alternative, " or ");
    return end;
}

}  // namespace

bool isSharedNoun(std::string_view lower) {
    return kSharedNouns.has(lower);
}

bool standsAlone(std::string_view lower) {
    return kAlone.has(lower);
}

std::size_t takeFoodAlternative(LineScan& scan, std::size_t i, Span food, bool onlyAdjectives) {
    if (food.isEmpty()) {
        const std::size_t end = beforeFood(scan, i);
        // An "or" with nothing before it is not understood.
        return end == i ? i + 1 : end;
    }
    const Span other{i + 1, endOfStretch(scan, i + 1)};
    if (tasteEnd(scan, i + 1) != i + 1 || scan.is(i + 1, "more") || other.isEmpty()) return i;
    const Span shared = sharedWords(scan, food, other, onlyAdjectives);
    scan.give({i, i + 1}, LinePartKind::Alternative);
    scan.addTo(scan.reading().alternative, other, LinePartKind::Alternative, " or ");
    if (!shared.isEmpty()) scan.reading().food += " " + scan.textOf(shared);
    return other.end;
}

}  // namespace nettare
