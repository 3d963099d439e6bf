#include "core/edit/line_amount.h"

#include <algorithm>
#include <array>

#include "core/food/piece_word.h"
#include "core/quantity/amount.h"
#include "core/recipe/words.h"
#include "core/support/text.h"

namespace nettare {

namespace {

struct UnitWord {
    std::string_view word;  ///< in lower case and the singular
    std::string_view symbol;
};

/// Units written out.
constexpr std::array<UnitWord, 25> kUnitWords{{
    {"gram", "g"},
    {"gramme", "g"},
    {"kilogram", "kg"},
    {"kilo", "kg"},
    {"milligram", "mg"},
    {"ounce", "oz"},
    {"pound", "lb"},
    {"millilitre", "ml"},
    {"milliliter", "ml"},
    {"litre", "l"},
    {"liter", "l"},
    {"centilitre", "cl"},
    {"centiliter", "cl"},
    {"decilitre", "dl"},
    {"deciliter", "dl"},
    {"fluid ounce", "fl oz"},
    {"fl. oz.", "fl oz"},
    {"gallon", "gal"},
    {"dessert spoon", "dessertspoon"},
    {"imperial pint", "imp pint"},
    {"imperial quart", "imp quart"},
    {"imperial gallon", "imp gal"},
    {"teaspoon", "tsp"},
    {"tablespoon", "tbsp"},
    {"cup", "cup"},
}};

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

/// "stick" is a piece word here: a line of cinnamon has sticks too.
bool isSymbol(std::string_view word) {
    return word != "stick" && std::ranges::find(kUnitSymbols, word) != kUnitSymbols.end();
}

std::optional<std::string> unitOf(std::string_view word) {
    if (isSymbol(word)) return std::string{word};
    const std::string lower = lowerAscii(word);
    if (isSymbol(lower)) return lower;
    std::string one = singularOf(lower);
    if (isSymbol(one)) return one;
    for (const UnitWord& known : kUnitWords)
        if (known.word == one) return std::string{known.symbol};
    return std::nullopt;
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
    if (amount.empty() || word.empty() || digits) return {std::string{text}, {}, {}};
    if (auto unit = unitOf(word)) return {std::string{amount}, std::move(unit), {}};
    const std::string one = samePiece(word, piece) ? std::string{piece} : singularOf(word);
    return {std::string{amount}, {}, one};
}

std::string lineAmountText(const LineEntry& line, std::string_view foodName) {
    const auto amount = readAmount(line.amount);
    if (!amount) return line.amount;
    if (line.unit) return line.amount + " " + *line.unit;
    const std::string piece = line.piece.value_or("");
    if (piece.empty() || isOwnWord(piece, foodName)) return line.amount;
    const bool several = amount->high() > Fraction{1};
    return line.amount + " " + (several ? pluralOf(piece) : piece);
}

}  // namespace nettare
