#include "core/wording/about_words.h"
#include "core/wording/head_piece.h"
#include "core/wording/head_reader.h"
#include "core/wording/preparation_words.h"
#include "core/wording/segment.h"
#include "core/wording/size_words.h"
#include "core/wording/unit_names.h"
#include "core/wording/unit_words.h"

namespace nettare {

bool HeadReader::between() {
    if (!reading_.units.empty()) return false;
    return article_ && mark()
               ? true
               : times() || furtherNumber() || bracket() || fill() || pieceSize() || filledBy();
}

bool HeadReader::times() {
    const bool sign = scan_.is(at_, "x") || scan_.is(at_, "\u00d7");
    if (!sign || !scan_.isKind(at_ + 1, TokenKind::Number)) return false;
    auto read = readMeasure(scan_, at_ + 1);
    if (!read) return false;
    take(at_ + 1, LinePartKind::Each);
    putEach(std::move(*read));
    return true;
}

bool HeadReader::furtherNumber() {
    if (!scan_.isKind(at_, TokenKind::Number) && !article_) return false;
    if (const std::size_t end = lengthEnd(scan_, at_); end != at_) {
        scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
        at_ = end;
        return true;
    }
    const auto number = readNumber(scan_, at_);
    if (!number || number->article) return false;
    auto read = measureOf(scan_, at_, *number);
    if (read && (!article_ || isOfOne(*read))) {
        putEach(std::move(*read));
    } else if (article_ && read) {
        measured(*number);
    } else if (article_) {
        setCount(*number, at_);
    } else {
        return false;
    }
    article_ = false;
    return true;
}

bool HeadReader::isOfOne(const MeasureRead& read) const {
    if (isPackAt(scan_, read.end)) return true;
    const auto& units = read.measure.units;
    return units.size() == 2 || isPlainMass(units.front());
}

bool HeadReader::bracket() {
    if (!scan_.isKind(at_, TokenKind::Open)) return false;
    if (scan_.closingOf(at_) + 1 >= scan_.size()) return false;
    at_ = takeBracket(scan_, at_, SegmentPlace::BeforePiece);
    return true;
}

bool HeadReader::fill() {
    const std::string_view fill = fillOf(scan_.word(at_));
    if (fill.empty() || !reading_.fill.empty()) return false;
    if (!countsSomething(at_ + 1)) return false;
    reading_.fill = fill;
    take(at_ + 1, LinePartKind::Fill);
    return true;
}

bool HeadReader::countsSomething(std::size_t i) const {
    const bool bracket =
        scan_.isKind(i, TokenKind::Open) && scan_.isKind(scan_.closingOf(i) + 1, TokenKind::Word);
    return bracket || readUnit(scan_, i) || isPieceAt(scan_, i) ||
           scan_.isKind(i, TokenKind::Number);
}

bool HeadReader::pieceSize() {
    const std::size_t end = sizeEnd(scan_, at_, true);
    if (end == at_ || !countsSomething(end)) return false;
    scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
    at_ = end;
    return true;
}

bool HeadReader::filledBy() {
    const std::size_t end = actEnd(scan_, at_);
    if (end == at_ || !readUnit(scan_, end)) return false;
    scan_.addPreparation({at_, end});
    at_ = end;
    return true;
}

}  // namespace nettare
