#include "core/wording/head_reader.h"

#include "core/wording/about_words.h"
#include "core/wording/head_piece.h"
#include "core/wording/size_words.h"
#include "core/wording/unit_words.h"

namespace nettare {

std::size_t HeadReader::read() {
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

void HeadReader::take(std::size_t end, LinePartKind kind) {
    scan_.give({at_, end}, kind);
    at_ = end;
}

bool HeadReader::mark() {
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

bool HeadReader::unsaid() {
    const bool little = scan_.is(at_, "a") && scan_.is(at_ + 1, "little");
    const std::size_t end = little ? at_ + 2 : scan_.is(at_, "some") ? at_ + 1 : at_;
    const bool food = scan_.isKind(end, TokenKind::Word) && !scan_.is(end, "gem");
    if (end == at_ || !food || sizeEnd(scan_, end, true) != end || countsSomething(end))
        return false;
    reading_.assumed = reading_.assumed || little;
    take(end, LinePartKind::Amount);
    return true;
}

void HeadReader::setCount(const NumberRead& number, std::size_t begin) {
    setAmount(scan_, begin, number, reading_.amount, reading_.amountAsked);
    reading_.about = reading_.about || number.about;
    reading_.assumed = reading_.assumed || number.assumed;
    article_ = number.article;
    scan_.give({begin, number.end}, LinePartKind::Amount);
    at_ = number.end;
}

void HeadReader::setOne() {
    if (!reading_.amount && !reading_.amountAsked)
        reading_.amount = Amount{Fraction{1}, Fraction{1}, "1"};
}

bool HeadReader::lengthFirst() {
    const std::size_t end = lengthEnd(scan_, at_);
    if (end == at_) return false;
    setOne();
    scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
    at_ = end;
    return true;
}

bool HeadReader::number() {
    const auto number = readNumber(scan_, at_);
    if (!number || isName(number->end)) {
        if (article_) setOne();
        return article_;
    }
    if (number->article || !measured(*number)) setCount(*number, at_);
    return true;
}

bool HeadReader::isName(std::size_t i) const {
    if (scan_.is(i, "%")) return true;
    const bool joined = scan_.isKind(i, TokenKind::Dash) && scan_.isGlued(i) &&
                        scan_.isGlued(i + 1) && scan_.isKind(i + 1, TokenKind::Word);
    return joined && !readUnit(scan_, i + 1);
}

bool HeadReader::measured(const NumberRead& number) {
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

}  // namespace nettare
