#include "core/wording/head_piece.h"

#include "core/wording/piece_words.h"
#include "core/wording/segment.h"
#include "core/wording/unit_words.h"

namespace nettare {

namespace {

std::size_t pastPieceWord(const LineScan& scan, std::size_t i) {
    return scan.isGlued(i + 1) && scan.is(i + 1, ".") ? i + 2 : i + 1;
}

/// True where the words from `i` on name a food.
bool namesFood(const LineScan& scan, std::size_t i) {
    if (scan.is(i, "of")) ++i;
    if (scan.isKind(i, TokenKind::Open)) i = scan.closingOf(i) + 1;
    if (scan.is(i, "of")) ++i;
    if (scan.isKind(i, TokenKind::Number)) return true;
    if (!scan.isKind(i, TokenKind::Word) || isTurn(scan, i)) return false;
    return !scan.is(i, "and") && !scan.is(i, "or") && !scan.is(i, "in") && !scan.is(i, "with");
}

}  // namespace

bool isPieceAt(const LineScan& scan, std::size_t i) {
    if (!scan.isKind(i, TokenKind::Word)) return false;
    const PieceWord* piece = pieceWord(scan.word(i));
    if (piece == nullptr || isFoodTogether(piece->word, scan.word(i + 1))) return false;
    return namesFood(scan, pastPieceWord(scan, i));
}

bool isLonePackAt(const LineScan& scan, std::size_t i) {
    const PieceWord* piece = pieceWord(scan.word(i));
    return piece != nullptr && piece->kind == PieceWordKind::Pack;
}

bool isPackAt(const LineScan& scan, std::size_t i) {
    return isLonePackAt(scan, i) && isPieceAt(scan, i);
}

bool isBareUnitAt(const LineScan& scan, std::size_t i) {
    const auto unit = readUnit(scan, i);
    if (!unit) return false;
    const bool named = !scan.reading().fill.empty() || scan.is(unit->end, "of");
    const std::string_view symbol = unit->symbol;
    const bool handy = symbol == "pinch" || symbol == "dash" || symbol == "drop" ||
                       symbol == "tsp" || symbol == "tbsp" || symbol == "cup";
    return scan.word(i).size() > 2 && namesFood(scan, unit->end) && (named || handy);
}

std::size_t takePiece(LineScan& scan, std::size_t i) {
    const PieceWord& piece = *pieceWord(scan.word(i));
    LineReading& reading = scan.reading();
    reading.piece = pieceNamed(piece);
    reading.assumed = reading.assumed || piece.kind == PieceWordKind::Manner;
    std::size_t at = pastPieceWord(scan, i);
    scan.give({i, at}, LinePartKind::Piece);
    if (scan.isKind(at, TokenKind::Open))
        at = takeBracket(
            scan, at,
            piece.kind == PieceWordKind::Pack ? SegmentPlace::AfterPack : SegmentPlace::AfterUnit);
    if (scan.is(at, "of")) {
        scan.give({at, at + 1}, LinePartKind::Piece);
        ++at;
    }
    return at;
}

}  // namespace nettare
