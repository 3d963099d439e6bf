#include "core/wording/line_food.h"

#include "core/wording/alternative.h"
#include "core/wording/piece_words.h"
#include "core/wording/preparation_words.h"
#include "core/wording/read_measure.h"
#include "core/wording/segment.h"
#include "core/wording/size_words.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

/// After these an act says what was done and names no food: "cut into", "peeled and".
constexpr WordList kNoFood{
    "and",  "at",         "but",        "crossways", "crosswise", "if",   "in",
    "into", "lengthways", "lengthwise", "on",        "or",        "then", "with",
};

class FoodReader {
public:
    FoodReader(LineScan& scan, std::size_t i) : scan_{scan}, reading_{scan.reading()}, at_{i} {
        const PieceWord* piece = pieceWord(reading_.piece);
        bought_ = piece != nullptr && piece->kind == PieceWordKind::Pack;
    }

    FoodRead read() {
        while (at_ < scan_.size() && step()) {
        }
        // "1 medium or 2 small onions"
        if (early_ && !reading_.food.empty()) reading_.alternative += " " + reading_.food;
        return {at_, words_};
    }

private:
    /// Takes one thing; false where the food is over.
    bool step() {
        if (scan_.isKind(at_, TokenKind::Open)) {
            at_ = takeBracket(scan_, at_, SegmentPlace::AfterFood);
            return true;
        }
        if (scan_.isKind(at_, TokenKind::Close)) {
            ++at_;
            return true;
        }
        if (isParting(scan_, at_)) return goesOn();
        if (scan_.is(at_, "or")) return alternative();
        if (!words_.isEmpty() && (isTurn(scan_, at_) || endsInMeasure())) return false;
        if (onlyAdjectives_ && !bought_ && (size() || act() || article())) return true;
        if (!words_.isEmpty() && tailAct()) return false;
        word();
        return true;
    }

    /// Past a comma between adjectives: "boneless, skinless chicken".
    bool goesOn() {
        if (words_.isEmpty()) {
            ++at_;
            return true;
        }
        if (!onlyAdjectives_ || !scan_.is(at_, ",")) return false;
        std::size_t i = at_ + 1;
        if (!isAdjective(scan_.word(i))) return false;
        while (isAdjective(scan_.word(i)) || scan_.is(i, ",")) ++i;
        if (!isNoun(i)) return false;
        commaAt_ = at_++;
        return true;
    }

    [[nodiscard]] bool isNoun(std::size_t i) const {
        return scan_.isKind(i, TokenKind::Word) && !kNoFood.has(scan_.word(i)) && !isTurn(scan_, i);
    }

    bool size() {
        const std::size_t end = sizeEnd(scan_, at_, false);
        if (end == at_ || (!isNoun(end) && !scan_.is(end, "or"))) return false;
        scan_.addTo(reading_.size, {at_, end}, LinePartKind::Size, ", ");
        takeComma(LinePartKind::Size);
        at_ = end;
        return true;
    }

    /// The comma before what was taken out of the food goes with it.
    void takeComma(LinePartKind kind) {
        if (commaAt_ != 0 && commaAt_ + 1 == at_) scan_.give({commaAt_, at_}, kind);
    }

    bool act() {
        const std::size_t end = actEnd(scan_, at_);
        if (end == at_ || !isNoun(end) || boughtSo_) return false;
        scan_.addPreparation({at_, end});
        takeComma(LinePartKind::Preparation);
        at_ = end;
        return true;
    }

    /// No food begins with "the"; the best one neither.
    bool article() {
        if (!words_.isEmpty() || !(scan_.is(at_, "the") || scan_.is(at_, "of")) || !isNoun(at_ + 1))
            return false;
        scan_.give({at_, at_ + 1}, LinePartKind::Food);
        ++at_;
        return true;
    }

    /// "onion finely chopped": words of doing behind the food, without a comma.
    [[nodiscard]] bool tailAct() const {
        if (onlyAdjectives_) return false;
        const std::size_t end = actEnd(scan_, at_);
        if (end == at_) return isDone();
        return !isNoun(end) && !scan_.isKind(end, TokenKind::Number);
    }

    /// "cornstarch mixed with water", "onion cut into wedges".
    [[nodiscard]] bool isDone() const {
        const std::string_view next = scan_.word(at_ + 1);
        if (scan_.is(at_, "made")) return next == "with" || next == "from";
        const bool led = next == "with" || next == "into";
        return led && (scan_.word(at_).ends_with("ed") || scan_.is(at_, "cut"));
    }

    /// "butter 50 g", "2 chicken breasts 150 g each".
    [[nodiscard]] bool endsInMeasure() const {
        if (endsInCount()) return true;
        if (!scan_.isKind(at_, TokenKind::Number)) return false;
        const auto read = readMeasure(scan_, at_);
        if (!read) return false;
        const std::size_t end = scan_.is(read->end, "each") ? read->end + 1 : read->end;
        return end >= scan_.size() || isParting(scan_, end) || scan_.isKind(end, TokenKind::Open);
    }

    /// "eggs x 2", in a line that begins with no number.
    [[nodiscard]] bool endsInCount() const {
        if (reading_.amount || reading_.amountAsked || !reading_.units.empty()) return false;
        const bool sign = scan_.is(at_, "x") || scan_.is(at_, "\u00d7");
        const auto number = readFigures(scan_, sign ? at_ + 1 : at_);
        return number && number->end == scan_.size();
    }

    bool alternative() {
        const std::size_t end = takeFoodAlternative(scan_, at_, words_, onlyAdjectives_);
        if (end == at_) return false;
        early_ = early_ || (words_.isEmpty() && !reading_.alternative.empty());
        at_ = end;
        return true;
    }

    void word() {
        const bool behindComma = commaAt_ + 1 == at_ && commaAt_ != 0 && words_.end == commaAt_;
        const std::size_t begin = behindComma ? commaAt_ : at_;
        const bool first = words_.isEmpty();
        const bool glued = !first && words_.end == begin && !scan_.at(begin).spaced;
        scan_.addTo(reading_.food, {begin, at_ + 1}, LinePartKind::Food, glued ? "" : " ");
        if (first) words_.begin = at_;
        words_.end = at_ + 1;
        onlyAdjectives_ = onlyAdjectives_ && isAdjective(scan_.word(at_));
        boughtSo_ = boughtSo_ || isBoughtState(scan_.word(at_));
        ++at_;
    }

    LineScan& scan_;
    LineReading& reading_;
    std::size_t at_;
    Span words_{0, 0};
    std::size_t commaAt_ = 0;
    bool bought_ = false;         ///< in a pack: the name stays whole
    bool boughtSo_ = false;       ///< "frozen" came before
    bool onlyAdjectives_ = true;  ///< no noun yet
    bool early_ = false;          ///< the alternative came before the food
};

}  // namespace

FoodRead readFood(LineScan& scan, std::size_t i) {
    return FoodReader{scan, i}.read();
}

}  // namespace nettare
