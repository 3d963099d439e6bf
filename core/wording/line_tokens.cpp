#include "core/wording/line_tokens.h"

#include <algorithm>

#include "core/support/text.h"
#include "core/wording/signs.h"

namespace nettare {

namespace {

bool isFigure(char c) {
    return c >= '0' && c <= '9';
}

/// Cuts one token after the other off the front of a line.
class TokenReader {
public:
    explicit TokenReader(std::string_view text) : text_{text} {}

    std::vector<Token> all() {
        // A word has about six letters; one growth less for most lines.
        tokens_.reserve(text_.size() / 4 + 2);
        while (at_ < text_.size()) {
            if (const std::size_t blank = blankLength(left())) {
                at_ += blank;
                spaced_ = true;
            } else {
                one();
            }
        }
        return std::move(tokens_);
    }

private:
    [[nodiscard]] std::string_view left(std::size_t from) const { return text_.substr(from); }
    [[nodiscard]] std::string_view left() const { return left(at_); }
    [[nodiscard]] bool digitAt(std::size_t i) const {
        return i < text_.size() && isFigure(text_[i]);
    }

    void add(std::size_t end, TokenKind kind) {
        tokens_.push_back({at_, end, kind, spaced_, LinePartKind::Blank});
        at_ = end;
        spaced_ = false;
    }

    void one() {
        const char c = text_[at_];
        const bool bare = c == '.' && digitAt(at_ + 1) && (spaced_ || at_ == 0);
        if (isFigure(c) || bare) return add(numberEnd(), TokenKind::Number);
        if (const std::size_t vulgar = vulgarLength(left()))
            return add(at_ + vulgar, TokenKind::Number);
        if (const std::size_t dash = dashLength(left())) return add(at_ + dash, TokenKind::Dash);
        if (c == ',' || c == ';') return add(at_ + 1, TokenKind::Comma);
        if (c == '(' || c == '[') return add(at_ + 1, TokenKind::Open);
        if (c == ')' || c == ']') return add(at_ + 1, TokenKind::Close);
        if (const std::size_t inert = footnoteLength(left()) + bulletLength(left()))
            return add(at_ + inert, TokenKind::Inert);
        if (const std::size_t sign = otherSignLength(left()) + slashLength(left()))
            return add(at_ + (c == '/' ? 1 : sign), TokenKind::Mark);
        if (isTimes()) return add(at_ + 1, TokenKind::Word);
        add(wordEnd(), TokenKind::Word);
    }

    /// The x of "2x400g" is a word of its own.
    [[nodiscard]] bool isTimes() const {
        const bool afterNumber = !tokens_.empty() && tokens_.back().kind == TokenKind::Number;
        return afterNumber && (text_[at_] == 'x' || text_[at_] == 'X') && digitAt(at_ + 1);
    }

    [[nodiscard]] std::size_t digitsEnd(std::size_t from) const {
        while (digitAt(from)) ++from;
        return from;
    }

    /// Digits, with marks or a slash between digits: "1,500.5", "1/2", "1⁄2".
    [[nodiscard]] std::size_t numberEnd() const {
        std::size_t end = digitsEnd(at_);
        if (end < text_.size()) {
            const std::size_t slash = slashLength(left(end));
            if (slash != 0 && digitAt(end + slash)) return digitsEnd(end + slash);
        }
        while (end < text_.size() && (text_[end] == '.' || text_[end] == ',') && digitAt(end + 1))
            end = digitsEnd(end + 1);
        return end;
    }

    /// True where the byte begins something that is no part of a word.
    [[nodiscard]] bool stopsWord(std::size_t i) const {
        const std::string_view from = left(i);
        const char c = from.front();
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || isFigure(c)) return false;
        return blankLength(from) + vulgarLength(from) + dashLength(from) + bulletLength(from) +
                   footnoteLength(from) + otherSignLength(from) + slashLength(from) !=
               0;
    }

    /// A hyphen or point goes on with the word where a letter follows: "sun-dried", "q.s."
    [[nodiscard]] std::size_t jointLength(std::size_t i) const {
        const std::size_t length = text_[i] == '.' ? 1 : hyphenLength(left(i));
        if (length == 0 || i + length >= text_.size()) return 0;
        return digitAt(i + length) || stopsWord(i + length) ? 0 : length;
    }

    [[nodiscard]] std::size_t wordEnd() const {
        std::size_t end = at_ + 1;
        while (end < text_.size()) {
            if (const std::size_t joint = jointLength(end))
                end += joint + 1;
            else if (stopsWord(end))
                break;
            else
                ++end;
        }
        return end;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    bool spaced_ = false;
    std::vector<Token> tokens_;
};

}  // namespace

std::vector<Token> tokensOf(std::string_view text) {
    std::size_t most = std::min(text.size(), kMostLineBytes);
    // A character is not cut in two, though of invalid bytes at most three are looked back at.
    if (most < text.size())
        most -= std::min<std::size_t>(3, most - utf8Prefix(text.substr(0, most)));
    std::vector<Token> tokens = TokenReader{text.substr(0, most)}.all();
    if (most < text.size())
        tokens.push_back({most, text.size(), TokenKind::Inert, false, LinePartKind::Blank});
    return tokens;
}

}  // namespace nettare
