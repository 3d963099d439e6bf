#include "core/wording/line_head.h"

#include <algorithm>

#include "core/wording/about_words.h"
#include "core/wording/head_piece.h"
#include "core/wording/piece_words.h"
#include "core/wording/preparation_words.h"
#include "core/wording/read_measure.h"
#include "core/wording/segment.h"
#include "core/wording/size_words.h"
#include "core/wording/taste_words.h"
#include "core/wording/unit_words.h"

namespace nettare {

namespace {

/// Reads one head from left to right; each step takes its tokens and moves on.
class HeadReader {
public:
    HeadReader(LineScan& scan, std::size_t i) : scan_{scan}, reading_{scan.reading()}, at_{i} {}

    std::size_t read() {
        while (mark()) {
        }
        if (unsaid()) return at_;
        if (lengthFirst() || number()) {
            while (between()) {
            }
        }
        unitOrPiece();
        return at_;
    }

private:
    void take(std::size_t end, LinePartKind kind) {
        scan_.give({at_, end}, kind);
        at_ = end;
    }

    /// "about", "heaping", and an article before them.
    bool mark() {
        const std::size_t at = scan_.is(at_, "a") || scan_.is(at_, "the") ? at_ + 1 : at_;
        if (const std::size_t end = aboutEnd(scan_, at); end != at) {
            reading_.about = true;
            take(end, LinePartKind::Amount);
            return true;
        }
        const std::string_view fill = fillOf(scan_.word(at));
        if (fill.empty() || at + 1 >= scan_.size() || !reading_.fill.empty()) return false;
        reading_.fill = fill;
        article_ = article_ || at != at_;
        take(at + 1, LinePartKind::Fill);
        return true;
    }

    /// "a little oil", "some oil": no number at all.
    bool unsaid() {
        const bool little = scan_.is(at_, "a") && scan_.is(at_ + 1, "little");
        const std::size_t end = little ? at_ + 2 : scan_.is(at_, "some") ? at_ + 1 : at_;
        const bool food = scan_.isKind(end, TokenKind::Word) && !scan_.is(end, "gem");
        if (end == at_ || !food || sizeEnd(scan_, end, true) != end || countsSomething(end))
            return false;
        reading_.assumed = reading_.assumed || little;
        take(end, LinePartKind::Amount);
        return true;
    }

    void setCount(const NumberRead& number, std::size_t begin) {
        setAmount(scan_, begin, number, reading_.amount, reading_.amountAsked);
        reading_.about = reading_.about || number.about;
        reading_.assumed = reading_.assumed || number.assumed;
        article_ = number.article;
        scan_.give({begin, number.end}, LinePartKind::Amount);
        at_ = number.end;
    }

    /// What is counted without a number is one.
    void setOne() {
        if (!reading_.amount && !reading_.amountAsked)
            reading_.amount = Amount{Fraction{1}, Fraction{1}, "1"};
    }

    /// "2-inch piece": no count but a length.
    bool lengthFirst() {
        const std::size_t end = lengthEnd(scan_, at_);
        if (end == at_) return false;
        setOne();
        scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
        at_ = end;
        return true;
    }

    bool number() {
        const auto number = readNumber(scan_, at_);
        if (!number || isName(number->end)) {
            if (article_) setOne();
            return article_;
        }
        if (number->article || !measured(*number)) setCount(*number, at_);
        return true;
    }

    /// The number of "2% milk" and "7-up" counts nothing.
    [[nodiscard]] bool isName(std::size_t i) const {
        if (scan_.is(i, "%")) return true;
        const bool joined = scan_.isKind(i, TokenKind::Dash) && scan_.isGlued(i) &&
                            scan_.isGlued(i + 1) && scan_.isKind(i + 1, TokenKind::Word);
        return joined && !readUnit(scan_, i + 1);
    }

    /// Number and unit. A pack behind them makes them what one pack holds: "400g tin of".
    bool measured(const NumberRead& number) {
        auto read = measureOf(scan_, at_, number);
        if (!read) return false;
        if (isPackAt(scan_, slashesEnd(read->end))) {
            setOne();
            putEach(std::move(*read));
            return true;
        }
        scan_.give({at_, number.end}, LinePartKind::Amount);
        reading_.amount = std::move(read->measure.amount);
        reading_.amountAsked = std::move(read->measure.asked);
        reading_.assumed = reading_.assumed || number.assumed;
        setUnits(*read);
        return true;
    }

    /// Behind "/14 oz" and its like.
    [[nodiscard]] std::size_t slashesEnd(std::size_t i) const {
        while (scan_.is(i, "/")) {
            const auto next = readMeasure(scan_, i + 1);
            if (!next) break;
            i = next->end;
        }
        return i;
    }

    void setUnits(MeasureRead& read) {
        reading_.units = std::move(read.measure.units);
        take(read.end, LinePartKind::Unit);
        afterUnit();
    }

    void putEach(MeasureRead read) {
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

    /// One thing between the number and what it counts.
    bool between() {
        if (!reading_.units.empty()) return false;
        return article_ && mark()
                   ? true
                   : times() || furtherNumber() || bracket() || fill() || pieceSize() || filledBy();
    }

    /// "2 x 400 g".
    bool times() {
        const bool sign = scan_.is(at_, "x") || scan_.is(at_, "\u00d7");
        if (!sign || !scan_.isKind(at_ + 1, TokenKind::Number)) return false;
        auto read = readMeasure(scan_, at_ + 1);
        if (!read) return false;
        take(at_ + 1, LinePartKind::Each);
        putEach(std::move(*read));
        return true;
    }

    bool furtherNumber() {
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

    /// Whether "a 3 lb ..." tells of one piece, and "a 1/2 cup ..." does not.
    [[nodiscard]] bool isOfOne(const MeasureRead& read) const {
        if (isPackAt(scan_, read.end)) return true;
        const auto& units = read.measure.units;
        return units.size() == 2 || isPlainMass(units.front());
    }

    /// "1 (14.5 oz) can"; nothing follows a bracket at the end of the line.
    bool bracket() {
        if (!scan_.isKind(at_, TokenKind::Open)) return false;
        if (scan_.closingOf(at_) + 1 >= scan_.size()) return false;
        at_ = takeBracket(scan_, at_, SegmentPlace::BeforePiece);
        return true;
    }

    bool fill() {
        const std::string_view fill = fillOf(scan_.word(at_));
        if (fill.empty() || !reading_.fill.empty()) return false;
        if (!countsSomething(at_ + 1)) return false;
        reading_.fill = fill;
        take(at_ + 1, LinePartKind::Fill);
        return true;
    }

    [[nodiscard]] bool countsSomething(std::size_t i) const {
        const bool bracket = scan_.isKind(i, TokenKind::Open) &&
                             scan_.isKind(scan_.closingOf(i) + 1, TokenKind::Word);
        return bracket || readUnit(scan_, i) || isPieceAt(scan_, i) ||
               scan_.isKind(i, TokenKind::Number);
    }

    /// Size before a unit or piece; before the food it is read there.
    bool pieceSize() {
        const std::size_t end = sizeEnd(scan_, at_, true);
        if (end == at_ || !countsSomething(end)) return false;
        scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
        at_ = end;
        return true;
    }

    /// "1 firmly packed cup".
    bool filledBy() {
        const std::size_t end = actEnd(scan_, at_);
        if (end == at_ || !readUnit(scan_, end)) return false;
        scan_.addPreparation({at_, end});
        at_ = end;
        return true;
    }

    void unitOrPiece() {
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

    bool unit(bool counted) {
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

    /// "cup and a half of"
    void andHalf() {
        if (!scan_.areAt(at_, "and a half") || !reading_.amount) return;
        const Fraction half = *Fraction::make(1, 2);
        const auto low = reading_.amount->low().plus(half);
        const auto high = reading_.amount->high().plus(half);
        if (!low || !high) return;
        reading_.amount = Amount{*low, *high, reading_.amount->text() + " and a half"};
        take(at_ + 3, LinePartKind::Amount);
    }

    void afterUnit() {
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

    LineScan& scan_;
    LineReading& reading_;
    std::size_t at_;
    bool article_ = false;  ///< what was read so far is no number but "a"
};

/// The colon of "for the sauce:", or `i`.
std::size_t purposeEnd(const LineScan& scan, std::size_t i) {
    if (!scan.is(i, "for") && !scan.is(i, "to")) return i;
    for (std::size_t at = i + 1; at < i + 7 && at + 1 < scan.size(); ++at)
        if (scan.is(at, ":")) return at;
    return i;
}

}  // namespace

std::size_t readFrontFlags(LineScan& scan, std::size_t i) {
    if (const std::size_t colon = purposeEnd(scan, i); colon != i) {
        scan.addPreparation({i, colon});
        scan.give({colon, colon + 1}, LinePartKind::Preparation);
        return colon + 1;
    }
    if (scan.is(i, "optional") && isParting(scan, i + 1)) {
        scan.reading().optional = true;
        scan.give({i, i + 2}, LinePartKind::Optional);
        return i + 2;
    }
    if (scan.isKind(i, TokenKind::Open) && scan.is(i + 1, "optional") &&
        scan.isKind(i + 2, TokenKind::Close) && i + 3 < scan.size())
        return takeBracket(scan, i, SegmentPlace::AfterFood);
    return i;
}

std::size_t readHead(LineScan& scan, std::size_t i) {
    return HeadReader{scan, i}.read();
}

}  // namespace nettare
