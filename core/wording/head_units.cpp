#include "core/wording/head_piece.h"
#include "core/wording/head_reader.h"
#include "core/wording/piece_words.h"
#include "core/wording/segment.h"
#include "core/wording/size_words.h"
#include "core/wording/unit_words.h"

namespace nettare {

std::size_t HeadReader::slashesEnd(std::size_t i) const {
    while (scan_.is(i, "/")) {
        const auto next = readMeasure(scan_, i + 1);
        if (!next) break;
        i = next->end;
    }
    return i;
}

void HeadReader::setUnits(MeasureRead& read) {
    reading_.units = std::move(read.measure.units);
    take(read.end, LinePartKind::Unit);
    afterUnit();
}

void HeadReader::putEach(MeasureRead read) {
    reading_.each.push_back(std::move(read.measure));
    take(read.end, LinePartKind::Each);
    // "1 14-oz/400 g can"
    while (scan_.is(at_, "/")) {
        auto next = readMeasure(scan_, at_ + 1);
        if (!next) break;
        reading_.each.push_back(std::move(next->measure));
        take(next->end, LinePartKind::Each);
    }
}

void HeadReader::unitOrPiece() {
    if (!reading_.units.empty()) return;
    const bool counted = reading_.amount || reading_.amountAsked;
    if (!counted) {
        const std::size_t size = sizeEnd(scan_, at_, true);
        const bool sized = size != at_ && (isBareUnitAt(scan_, size) || isPieceAt(scan_, size));
        if (sized) {
            scan_.addTo(reading_.size, {at_, size}, LinePartKind::Size, ", ");
            at_ = size;
        }
    }
    const bool lone = !reading_.each.empty() && isLonePackAt(scan_, at_);
    if (unit(counted) || (!lone && !isPieceAt(scan_, at_))) return;
    // "leaves" without a number are no count.
    if (!counted && pieceWord(scan_.word(at_))->word != scan_.word(at_)) return;
    setOne();
    at_ = takePiece(scan_, at_);
}

bool HeadReader::unit(bool counted) {
    if (!counted && !isBareUnitAt(scan_, at_)) return false;
    const auto unit = readUnit(scan_, at_);
    if (!unit || !reading_.each.empty()) return false;
    setOne();
    reading_.units.push_back(unit->symbol);
    if (!unit->other.empty()) reading_.units.push_back(unit->other);
    take(unit->end, LinePartKind::Unit);
    afterUnit();
    return true;
}

void HeadReader::andHalf() {
    if (!scan_.areAt(at_, "and a half") || !reading_.amount) return;
    const Fraction half = *Fraction::make(1, 2);
    const auto low = reading_.amount->low().plus(half);
    const auto high = reading_.amount->high().plus(half);
    if (!low || !high) return;
    reading_.amount = Amount{*low, *high, reading_.amount->text() + " and a half"};
    take(at_ + 3, LinePartKind::Amount);
}

void HeadReader::afterUnit() {
    andHalf();
    while (scan_.is(at_, "/")) {
        auto next = readMeasure(scan_, at_ + 1);
        if (!next) break;
        reading_.equals.push_back(std::move(next->measure));
        take(next->end, LinePartKind::Equals);
    }
    if (scan_.isKind(at_, TokenKind::Open) && scan_.closingOf(at_) + 1 < scan_.size())
        at_ = takeBracket(scan_, at_, SegmentPlace::AfterUnit);
    // "1/2 tsp each salt and pepper": of how many foods is for the cook to say.
    if (scan_.is(at_, "each") && at_ + 1 < scan_.size()) take(at_ + 1, LinePartKind::Rest);
    if (scan_.is(at_, "of")) take(at_ + 1, LinePartKind::Unit);
}

}  // namespace nettare
