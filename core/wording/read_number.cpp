#include "core/wording/read_number.h"

#include "core/wording/figures.h"
#include "core/wording/number_words.h"

namespace nettare {

namespace {

/// "half", "a quarter": the token behind it with "and" before it: "one and a half".
std::optional<NumberRead> wordPartAfter(const LineScan& scan, std::size_t i) {
    if (!scan.is(i, "and")) return std::nullopt;
    const std::size_t at = scan.is(i + 1, "a") || scan.is(i + 1, "one") ? i + 2 : i + 1;
    const NumberWord* part = numberWord(scan.word(at));
    const bool fits = part != nullptr && at > i + 1 &&
                      (part->kind == NumberWordKind::Half || part->kind == NumberWordKind::Share);
    if (!fits) return std::nullopt;
    return exactNumber(at + 1, *Fraction::make(part->numerator, part->denominator));
}

std::optional<NumberRead> timesGroup(const LineScan& scan, const NumberRead& number) {
    const NumberWord* group = numberWord(scan.word(number.end));
    if (group == nullptr || group->kind != NumberWordKind::Group || number.grouped) return number;
    const auto product = number.low.times(Fraction{group->numerator});
    return product ? exactNumber(number.end + 1, *product) : number;
}

/// Behind a share or group: "of", and the article of "half a", "three quarters of a".
std::size_t pastArticle(const LineScan& scan, std::size_t i) {
    const std::size_t at = scan.is(i, "of") ? i + 1 : i;
    return scan.is(at, "a") || scan.is(at, "an") || scan.is(at, "the") ? at + 1 : at;
}

/// "half", "half a", "half a dozen"; not "half and half".
std::optional<NumberRead> halfAt(const LineScan& scan, std::size_t i) {
    if (scan.is(i + 1, "and") || scan.is(i + 1, "&") || !scan.isKind(i + 1, TokenKind::Word))
        return std::nullopt;
    return timesGroup(scan, exactNumber(pastArticle(scan, i + 1), *Fraction::make(1, 2)));
}

std::optional<NumberRead> vague(std::size_t end, const NumberWord& word) {
    NumberRead read{end, Fraction{word.numerator}, Fraction{word.high}, {}};
    read.assumed = true;
    return read;
}

/// What may follow "a": "half", "dozen", "couple of", "few", a share; else "a" is one.
std::optional<NumberRead> afterArticle(const LineScan& scan, std::size_t i) {
    // "a 1/2 cup" and "a 400 g tin" are for the caller.
    const NumberWord* next = numberWord(scan.word(i + 1));
    if (next != nullptr && next->kind == NumberWordKind::Half) return halfAt(scan, i + 1);
    if (next != nullptr && next->kind == NumberWordKind::Vague) return vague(i + 2, *next);
    if (next != nullptr && next->kind == NumberWordKind::Group)
        return exactNumber(scan.is(i + 2, "of") ? i + 3 : i + 2, Fraction{next->numerator});
    if (next != nullptr && next->kind == NumberWordKind::Share)
        return exactNumber(pastArticle(scan, i + 2), *Fraction::make(1, next->denominator));
    if (i + 1 >= scan.size()) return std::nullopt;
    NumberRead one = exactNumber(i + 1, Fraction{1});
    one.article = true;
    return one;
}

/// "two", "two and a half", "two thirds of a", "two dozen".
std::optional<NumberRead> afterCount(const LineScan& scan, std::size_t i, const NumberWord& word) {
    const Fraction value = *Fraction::make(word.numerator, word.denominator);
    if (word.denominator != 1) return exactNumber(pastArticle(scan, i + 1), value);
    const NumberWord* next = numberWord(scan.word(i + 1));
    if (next != nullptr &&
        (next->kind == NumberWordKind::Share || next->kind == NumberWordKind::Half))
        return exactNumber(pastArticle(scan, i + 2),
                           *Fraction::make(word.numerator, next->denominator));
    return withPart(exactNumber(i + 1, value), wordPartAfter(scan, i + 1));
}

std::optional<NumberRead> oneNumber(const LineScan& scan, std::size_t i) {
    if (const auto figures = oneFigures(scan, i)) {
        NumberRead mixed = withPart(*figures, wordPartAfter(scan, figures->end));
        const bool share = mixed.low.denominator() != 1;
        if (scan.is(mixed.end, "of") || share) mixed.end = pastArticle(scan, mixed.end);
        return timesGroup(scan, mixed);
    }
    const NumberWord* word = numberWord(scan.word(i));
    if (word == nullptr) return std::nullopt;
    switch (word->kind) {
        case NumberWordKind::Article:
            return afterArticle(scan, i);
        case NumberWordKind::Half:
            return halfAt(scan, i);
        case NumberWordKind::Count:
            return timesGroup(scan, *afterCount(scan, i, *word));
        case NumberWordKind::Vague:
            return vague(i + 1, *word);
        case NumberWordKind::Group:
            return exactNumber(scan.is(i + 1, "of") ? i + 2 : i + 1, Fraction{word->numerator});
        case NumberWordKind::Share:
            break;
    }
    // "quarter cup" is one, "third" alone is a place in a row.
    return scan.is(i, "quarter") ? exactNumber(pastArticle(scan, i + 1), *Fraction::make(1, 4))
                                 : std::optional<NumberRead>{};
}

/// One range of two numbers; nothing where the second is below the first.
std::optional<NumberRead> rangeOf(const NumberRead& low, const NumberRead& high) {
    if (high.low < low.low || low.assumed || high.assumed || high.article) return std::nullopt;
    NumberRead range{high.end, low.low, high.low, {}};
    if (low.grouped || high.grouped) {
        const Fraction from = low.grouped ? low.grouped->first : low.low;
        const Fraction to = high.grouped ? high.grouped->first : high.low;
        if (to < from) return std::nullopt;
        range.grouped = {from, to};
    }
    return range;
}

/// Behind "to", "or", a dash, and both of "3- to 4-pound"; `i` where there is none.
std::size_t rangeSignEnd(const LineScan& scan, std::size_t i) {
    const std::size_t at = scan.isKind(i, TokenKind::Dash) ? i + 1 : i;
    return scan.is(at, "to") || scan.is(at, "or") ? at + 1 : at;
}

using ReadOne = std::optional<NumberRead> (*)(const LineScan&, std::size_t);

std::optional<NumberRead> maybeRange(const LineScan& scan, std::size_t i, ReadOne readOne) {
    const auto low = readOne(scan, i);
    if (!low || low->article) return low;
    const std::size_t next = rangeSignEnd(scan, low->end);
    if (next == low->end) return low;
    const auto high = readOne(scan, next);
    const auto range = high ? rangeOf(*low, *high) : std::nullopt;
    return range ? range : low;
}

}  // namespace

std::optional<NumberRead> readFigures(const LineScan& scan, std::size_t i) {
    return maybeRange(scan, i, oneFigures);
}

std::optional<NumberRead> readNumber(const LineScan& scan, std::size_t i) {
    if (scan.is(i, "between")) {
        const auto low = oneNumber(scan, i + 1);
        const auto high = low && scan.is(low->end, "and") ? oneNumber(scan, low->end + 1) : low;
        return low && high && high->end > low->end ? rangeOf(*low, *high) : std::nullopt;
    }
    auto number = maybeRange(scan, i, oneNumber);
    if (number && !number->article && scan.areAt(number->end, "or so")) {
        number->about = true;
        number->end += 2;
    }
    return number;
}

void setAmount(const LineScan& scan, std::size_t begin, const NumberRead& number,
               std::optional<Amount>& amount, std::optional<AskedAmount>& asked) {
    const std::string text = scan.textOf({begin, number.end});
    const Amount plain{number.low, number.high, text};
    amount.reset();
    asked.reset();
    if (number.grouped)
        asked = AskedAmount{plain, Amount{number.grouped->first, number.grouped->second, text}};
    else
        amount = plain;
}

}  // namespace nettare
