#include <algorithm>

#include "core/support/text.h"
#include "core/wording/line_end.h"
#include "core/wording/piece_words.h"
#include "core/wording/size_words.h"
#include "core/wording/unit_names.h"

namespace nettare {

namespace {

bool isButter(std::string_view food) {
    const std::string lower = lowerAscii(food);
    for (const std::string_view word : words(lower))
        if (word == "butter" || word == "margarine") return true;
    return false;
}

/// "fat garlic cloves": the cloves are fat.
void settleSize(LineScan& scan, std::size_t first) {
    LineReading& reading = scan.reading();
    const std::string_view word = scan.written(first);
    if (!isSizeOfPiece(scan.word(first)) || !reading.food.starts_with(word)) return;
    if (reading.food.size() < word.size() + 2) return;
    reading.food.erase(0, word.size() + 1);
    reading.size += (reading.size.empty() ? "" : ", ") + std::string{word};
    scan.giveAnew(first, LinePartKind::Size);
}

/// "garlic cloves": the last word of the food is what is counted.
void settlePiece(LineScan& scan, const FoodRead& food) {
    LineReading& reading = scan.reading();
    const bool counted = reading.amount && reading.units.empty() && reading.piece.empty();
    if (!counted || food.words.end < food.words.begin + 2) return;
    const std::size_t last = food.words.end - 1;
    const PieceWord* piece = pieceWord(scan.word(last));
    const std::string_view before = scan.word(last - 1);
    if (piece == nullptr || !piece->last || isCutOrShape(before, piece->word)) return;
    const std::string_view word = scan.written(last);
    if (!reading.food.ends_with(word) || reading.food.size() < word.size() + 2) return;
    reading.piece = pieceNamed(*piece);
    reading.food.resize(reading.food.size() - word.size() - 1);
    scan.giveAnew(last, LinePartKind::Piece);
    settleSize(scan, food.words.begin);
}

void settleStick(LineScan& scan) {
    LineReading& reading = scan.reading();
    const bool butter = isButter(reading.food);
    for (LineMeasure& measure : reading.equals)
        if (!butter && measure.units == std::vector<std::string_view>{"stick"}) {
            measure.units.clear();
            measure.counted = "sticks";
        }
    if (!butter || reading.piece != "stick") return;
    reading.piece.clear();
    reading.units = {"stick"};
    for (std::size_t i = 0; i < scan.size(); ++i)
        if (scan.at(i).owner == LinePartKind::Piece) scan.giveAnew(i, LinePartKind::Unit);
}

bool hasMass(const std::vector<std::string_view>& units) {
    return units.size() == 1 && isPlainMass(units.front());
}

bool hasMass(const std::vector<LineMeasure>& measures) {
    return std::ranges::any_of(measures, [](const LineMeasure& m) { return hasMass(m.units); });
}

void settleOunces(LineReading& reading) {
    if (!hasMass(reading.units) && !hasMass(reading.each) && !hasMass(reading.equals)) return;
    const auto decide = [](std::vector<std::string_view>& units) {
        if (units.size() == 2) units.resize(1);
    };
    decide(reading.units);
    for (auto* measures : {&reading.each, &reading.equals})
        for (LineMeasure& measure : *measures) decide(measure.units);
}

}  // namespace

void settle(LineScan& scan, const FoodRead& food) {
    settlePiece(scan, food);
    settleStick(scan);
    settleOunces(scan.reading());
}

}  // namespace nettare
