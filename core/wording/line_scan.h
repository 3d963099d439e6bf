#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/wording/line_reading.h"
#include "core/wording/line_tokens.h"

namespace nettare {

/// A stretch of tokens [begin, end).
struct Span {
    std::size_t begin, end;
    [[nodiscard]] bool isEmpty() const { return begin >= end; }
};

/// The tokens of one line with who has taken them, and the reading that they fill. List and
/// footnote marks are put aside at the start, so that no rule meets them.
class LineScan {
public:
    /// Both must outlive the scan.
    LineScan(std::string_view text, LineReading& reading);

    [[nodiscard]] LineReading& reading() { return reading_; }
    [[nodiscard]] const LineReading& reading() const { return reading_; }
    [[nodiscard]] std::size_t size() const { return tokens_.size(); }
    [[nodiscard]] const Token& at(std::size_t i) const { return tokens_[i]; }
    [[nodiscard]] bool isKind(std::size_t i, TokenKind kind) const {
        return i < tokens_.size() && tokens_[i].kind == kind;
    }
    /// The token's bytes with ASCII letters in lower case; nothing beyond the end.
    [[nodiscard]] std::string_view word(std::size_t i) const {
        if (i >= tokens_.size()) return {};
        const Token& token = tokens_[i];
        return {lower_.data() + token.begin, token.end - token.begin};
    }
    /// As written.
    [[nodiscard]] std::string_view written(std::size_t i) const;
    [[nodiscard]] bool is(std::size_t i, std::string_view lower) const {
        const std::string_view own = word(i);
        return own.size() == lower.size() && std::equal(own.begin(), own.end(), lower.begin());
    }
    /// True where the words stand there one after the other, parted by single blanks in `lower`.
    [[nodiscard]] bool areAt(std::size_t i, std::string_view lower) const;
    /// True where the token follows without a blank on the one before it.
    [[nodiscard]] bool isGlued(std::size_t i) const {
        return i > 0 && i < tokens_.size() && !tokens_[i].spaced &&
               tokens_[i - 1].end == tokens_[i].begin;
    }
    /// The bracket that closes the one at `open`, or the end of the line.
    [[nodiscard]] std::size_t closingOf(std::size_t open) const;

    /// The first field that takes a token keeps it.
    void give(Span span, LinePartKind owner);
    /// Where a later word shows what the token is: "1 stick" before "butter".
    void giveAnew(std::size_t i, LinePartKind owner);
    /// As written, with single blanks; none at the ends.
    [[nodiscard]] std::string textOf(Span span) const;
    /// Adds the span's text to a field behind a separator, and gives it the tokens.
    void addTo(std::string& field, Span span, LinePartKind owner, std::string_view separator);
    void addPreparation(Span span) {
        addTo(reading_.preparation, span, LinePartKind::Preparation, ", ");
    }

    /// Everything that nobody took goes to the rest; the partition of the text is written down.
    void finish();

private:
    void putAside();
    [[nodiscard]] std::size_t noteEnd(std::size_t i) const;
    [[nodiscard]] std::size_t listMarkEnd(std::size_t i) const;
    void addRest(const Token& token);
    void writeParts();

    std::string_view text_;
    std::string lower_;
    std::vector<Token> tokens_, aside_;
    LineReading& reading_;
};

}  // namespace nettare
