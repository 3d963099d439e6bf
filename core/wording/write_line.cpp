#include "core/wording/write_line.h"

#include "core/food/piece_word.h"
#include "core/wording/part_of.h"
#include "core/wording/piece_words.h"
#include "core/wording/read_line.h"

namespace nettare {

namespace {

/// Words with one blank between them.
void append(std::string& line, std::string_view words) {
    if (words.empty()) return;
    if (!line.empty()) line += ' ';
    line += words;
}

std::string figuresText(const std::optional<Amount>& amount,
                        const std::optional<AskedAmount>& asked) {
    if (asked) return asked->decimal.text();
    if (!amount) return {};
    const std::string low = writeFraction(amount->low());
    return amount->isRange() ? low + "-" + writeFraction(amount->high()) : low;
}

std::string_view firstOf(const std::vector<std::string_view>& units) {
    return units.empty() ? std::string_view{} : units.front();
}

std::string measuresText(const std::vector<LineMeasure>& measures) {
    std::string text;
    for (const LineMeasure& measure : measures)
        text += (text.empty() ? "" : "/") + writeMeasure(measure);
    return text;
}

bool isManner(const LineReading& reading) {
    const PieceWord* piece = pieceWord(reading.piece);
    return piece != nullptr && piece->kind == PieceWordKind::Manner;
}

/// "a few", where the number itself is a manner of speaking.
std::string countText(const LineReading& reading) {
    const bool vague = reading.assumed && reading.amount && reading.amount->isRange() &&
                       !isManner(reading) && !reading.size.starts_with("the size");
    if (vague && reading.amount->low() == Fraction{2}) return "a few";
    if (vague && reading.amount->low() == Fraction{3}) return "several";
    if (reading.assumed && !reading.amount && !reading.amountAsked && reading.size.empty())
        return "a little";
    return figuresText(reading.amount, reading.amountAsked);
}

bool counts(const LineReading& reading) {
    if (reading.amountAsked) return true;
    return reading.amount && reading.amount->high() > Fraction{1};
}

/// A size that is a word stands before the pieces, one that is a phrase in a bracket behind the
/// food.
bool isPhrase(std::string_view size) {
    return size.find(' ') != std::string_view::npos || size.find(',') != std::string_view::npos;
}

/// Of "lemon juice" by the lemon: the part, empty where the food is no part of its piece.
std::string partTaken(const LineReading& reading) {
    const bool lone = pieceWord(reading.piece) == nullptr && !reading.piece.empty();
    const std::size_t at = reading.food.rfind(reading.piece + " ");
    if (!lone || at == std::string::npos) return {};
    return reading.food.substr(at + reading.piece.size() + 1);
}

void appendFront(std::string& line, const LineReading& reading) {
    if (reading.about) append(line, "about");
    append(line, countText(reading));
    append(line, reading.fill);
    if (!reading.each.empty()) append(line, "(" + measuresText(reading.each) + ")");
    if (!isPhrase(reading.size)) append(line, reading.size);
    append(line, firstOf(reading.units));
    if (reading.units.size() == 1 && reading.units.front() == "oz" && reading.equals.empty())
        append(line, "by weight");
}

void appendFood(std::string& line, const LineReading& reading) {
    const std::string part = partTaken(reading);
    if (part.empty()) {
        if (!reading.piece.empty())
            append(line, counts(reading) ? pluralOf(reading.piece) : reading.piece);
        append(line, reading.food);
        return;
    }
    line = part + " of " + line;
    append(line, reading.food.substr(0, reading.food.size() - part.size() - 1));
}

void appendBehind(std::string& line, const LineReading& reading) {
    if (isPhrase(reading.size)) append(line, "(" + reading.size + ")");
    if (!reading.equals.empty()) append(line, "(" + measuresText(reading.equals) + ")");
    if (!reading.alternative.empty()) append(line, "(or " + reading.alternative + ")");
    if (!reading.preparation.empty()) line += ", " + reading.preparation;
    if (reading.toTaste) line += ", to taste";
    if (reading.optional) append(line, "(optional)");
}

}  // namespace

std::string writeMeasure(const LineMeasure& measure) {
    std::string text = measure.about ? "about" : "";
    append(text, figuresText(measure.amount, measure.asked));
    append(text, measure.counted.empty() ? firstOf(measure.units) : measure.counted);
    return text;
}

std::string canonicalLine(const LineReading& reading) {
    std::string line;
    appendFront(line, reading);
    appendFood(line, reading);
    appendBehind(line, reading);
    for (const std::string& mark : reading.rest) append(line, mark);
    return line;
}

std::string writeLine(const LineReading& reading) {
    std::string line = canonicalLine(reading);
    if (sameFields(readLine(line), reading)) return line;
    // A reading that was changed since has no text of its own.
    return sameFields(readLine(reading.text), reading) ? reading.text : line;
}

}  // namespace nettare
