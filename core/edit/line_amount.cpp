#include "core/edit/line_amount.h"

#include <algorithm>

#include "core/food/piece_word.h"
#include "core/quantity/amount.h"
#include "core/recipe/words.h"
#include "core/support/text.h"
#include "core/wording/read_line.h"

namespace nettare {

namespace {

/// True for bytes that amounts consist of beside ASCII: fractions, dashes, the fraction slash and
/// spaces of the Latin-1, General Punctuation and Number Forms blocks.
bool isAmountSequence(std::string_view sequence) {
    if (sequence.starts_with("\xC2")) {
        const std::string_view latin = "\xA0\xBC\xBD\xBE";
        return sequence.size() > 1 && latin.find(sequence[1]) != std::string_view::npos;
    }
    return sequence.starts_with("\xE2\x80") || sequence.starts_with("\xE2\x81") ||
           sequence.starts_with("\xE2\x85");
}

/// Where the words begin: at the first letter.
std::size_t wordsStart(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        const auto byte = static_cast<unsigned char>(text[at]);
        const bool letter = (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
        if (letter || (byte >= 0x80 && !isAmountSequence(text.substr(at)))) return at;
        at += byte < 0x80 ? 1 : byte < 0xE0 ? 2 : 3;
    }
    return text.size();
}

/// The unit that those words are, by readLine(). Here an ounce is one of weight, as "fl oz" is a
/// unit of its own.
std::optional<std::string> unitOf(std::string_view words) {
    if (words == "mL" || words == "L") return std::string{words};
    const LineReading read = readLine("1 " + std::string{words});
    const bool whole = read.food.empty() && read.piece.empty() && read.rest.empty();
    if (!whole || read.units.empty()) return std::nullopt;
    return std::string{read.units.front()};
}

MeasuredAmount measured(const LineMeasure& measure) {
    return {measure.amount ? measure.amount->text() : "", std::string{measure.units.front()}};
}

/// "2 x 400 g tins", "1 heaping tbsp": what a number and a word alone do not hold.
std::optional<LineAmount> packedOrFilled(std::string_view typed) {
    const LineReading read = readLine(typed);
    const bool packed = !read.each.empty() && read.each.front().amount &&
                        !read.each.front().units.empty() && !read.piece.empty();
    if (!read.amount || !read.food.empty() || (!packed && read.fill.empty())) return std::nullopt;
    LineAmount amount{read.amount->text(), {}, {}};
    if (!read.units.empty()) amount.unit = std::string{read.units.front()};
    if (!read.piece.empty()) amount.piece = read.piece;
    if (packed) amount.each = measured(read.each.front());
    if (!read.fill.empty()) amount.fill = read.fill;
    return amount;
}

/// "prawn" beside "prawns", "egg" beside "egg, whole".
bool isOwnWord(std::string_view piece, std::string_view foodName) {
    return samePiece(piece, trimmed(foodName.substr(0, foodName.find(','))));
}

}  // namespace

LineAmount readLineAmount(std::string_view typed, std::string_view piece) {
    const std::string_view text = trimmed(typed);
    const std::size_t start = std::min(wordsStart(text), text.size());
    const std::string_view amount = trimmed(text.substr(0, start));
    const std::string_view word = trimmed(text.substr(start));
    const bool digits = word.find_first_of("0123456789") != std::string_view::npos;
    if (auto more = packedOrFilled(text)) return *more;
    if (amount.empty() || word.empty() || digits) return {std::string{text}, {}, {}};
    if (auto unit = unitOf(word)) return {std::string{amount}, std::move(unit), {}};
    const std::string one = samePiece(word, piece) ? std::string{piece} : singularOf(word);
    return {std::string{amount}, {}, one};
}

std::string lineAmountText(const LineEntry& line, std::string_view foodName) {
    if (line.toTaste) return std::string{kToTasteText};
    const auto amount = readAmount(line.amount);
    if (!amount) return line.amount;
    const std::string fill =
        line.fill ? std::string{wordFor(*line.fill, kFillWords)} + " " : std::string{};
    if (line.unit) return line.amount + " " + fill + *line.unit;
    const std::string piece = line.piece.value_or("");
    const bool several = amount->high() > Fraction{1};
    const std::string word = several ? pluralOf(piece) : piece;
    if (line.each)
        return line.amount + " x " + line.each->amount + " " + line.each->unit + " " + word;
    if (piece.empty() || isOwnWord(piece, foodName)) return line.amount;
    return line.amount + " " + word;
}

}  // namespace nettare
