#include "core/wording/part_of.h"

#include <array>

#include "core/food/piece_word.h"
#include "core/support/text.h"
#include "core/wording/about_words.h"
#include "core/wording/piece_words.h"
#include "core/wording/preparation_words.h"
#include "core/wording/read_number.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kTakenParts{
    "florets", "flesh", "fronds", "juice", "juices", "kernels", "leaves", "meat",  "peel", "pulp",
    "rind",    "seeds", "skin",   "tops",  "white",  "whites",  "yolk",   "yolks", "zest", "zests",
};

/// The stretch "zest and juice" at `i`, acts before each part taken as preparation later.
struct TakenParts {
    std::size_t end;
    std::string text;
    Span acts{0, 0};
};

TakenParts partsAt(const LineScan& scan, std::size_t i) {
    TakenParts parts{i, {}, {i, i}};
    std::size_t at = actEnd(scan, i);
    parts.acts = {i, at};
    while (isPartWord(scan.word(at))) {
        if (!parts.text.empty()) parts.text += " and ";
        parts.text += scan.word(at);
        parts.end = at + 1;
        if (!scan.is(at + 1, "and") && !scan.is(at + 1, "&")) break;
        const std::size_t next = at + 2;
        at = actEnd(scan, next);
        if (at != next) parts.acts = {next, at};
    }
    return parts;
}

/// Less its last word: "cardamom pods" to "cardamom".
std::string withoutLast(const std::string& text) {
    const std::size_t blank = text.find_last_of(' ');
    return blank == std::string::npos ? text : text.substr(0, blank);
}

std::string lastOf(const std::string& text) {
    return text.substr(text.find_last_of(' ') + 1);
}

}  // namespace

bool isPartWord(std::string_view lower) {
    return kTakenParts.has(lower);
}

PartOf readPartOf(LineScan& scan, std::size_t i) {
    const std::size_t start = scan.is(i, "the") ? i + 1 : i;
    const TakenParts parts = partsAt(scan, start);
    // "leaves picked from 3 sprigs"
    const std::size_t of = actEnd(scan, parts.end);
    const bool taken = scan.is(of, "of") || scan.is(of, "from");
    if (parts.text.empty() || !taken || !readNumber(scan, aboutEnd(scan, of + 1))) return {i, {}};
    scan.addPreparation(parts.acts);
    scan.addPreparation({parts.end, of});
    scan.give({i, of + 1}, LinePartKind::Food);
    return {of + 1, parts.text};
}

void applyPartOf(LineScan& scan, const PartOf& part, Span food) {
    LineReading& reading = scan.reading();
    if (part.parts.empty() || reading.food.empty()) return;
    if (!reading.piece.empty() || !reading.units.empty()) {
        reading.food += " " + part.parts;
        return;
    }
    const std::string last = lastOf(reading.food);
    const bool counts = last.size() < reading.food.size() && pieceWord(lowerAscii(last)) != nullptr;
    reading.piece = singularOf(last);
    reading.food = counts ? withoutLast(reading.food) : singularOf(reading.food);
    reading.food += " " + part.parts;
    if (!food.isEmpty()) scan.giveAnew(food.end - 1, LinePartKind::Piece);
}

}  // namespace nettare
