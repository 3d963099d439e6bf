#include "core/wording/line_scan.h"

#include <algorithm>
#include <iterator>

#include "core/support/text.h"

namespace nettare {

LineScan::LineScan(std::string_view text, LineReading& reading)
    : text_{text},
      lower_{lowerAscii(text.substr(0, kMostLineBytes))},
      tokens_{tokensOf(text)},
      reading_{reading} {
    putAside();
}

/// Behind a footnote mark at `i`: "*", "[1]", or what lies beyond the length read.
std::size_t LineScan::noteEnd(std::size_t i) const {
    if (at(i).kind == TokenKind::Inert) return i + 1;
    const bool note =
        written(i) == "[" && isKind(i + 1, TokenKind::Number) && written(i + 2) == "]";
    return note ? i + 3 : i;
}

/// Behind a mark that only the front of a line has: "-", "1)", "[ ]".
std::size_t LineScan::listMarkEnd(std::size_t i) const {
    if (isKind(i, TokenKind::Dash)) return i + 1;
    if (written(i) == "[" && written(i + 1) == "]") return i + 2;
    const bool numbered = isKind(i, TokenKind::Number) && isGlued(i + 1) && i + 2 < size() &&
                          at(i + 2).spaced && (written(i + 1) == ")" || written(i + 1) == ".");
    return numbered ? i + 2 : i;
}

/// List marks ("- ", "•"), footnote marks ("*", "[1]"), and what lies beyond the length read.
void LineScan::putAside() {
    std::vector<Token> kept;
    kept.reserve(tokens_.size());
    const auto take = [&](std::size_t i) {
        tokens_[i].owner = LinePartKind::Rest;
        aside_.push_back(tokens_[i]);
    };
    std::size_t i = 0;
    while (i < tokens_.size()) {
        const std::size_t end = std::max(noteEnd(i), kept.empty() ? listMarkEnd(i) : i);
        if (end == i) kept.push_back(tokens_[i++]);
        while (i < end) take(i++);
    }
    tokens_ = std::move(kept);
    // The full stop of a sentence goes with what stands before it.
    const std::size_t last = size() - 1;
    if (size() > 1 && written(last) == "." && isGlued(last)) {
        aside_.push_back(tokens_.back());
        tokens_.pop_back();
        std::ranges::sort(aside_, {}, &Token::begin);
    }
}

std::string_view LineScan::written(std::size_t i) const {
    if (i >= tokens_.size()) return {};
    return text_.substr(tokens_[i].begin, tokens_[i].end - tokens_[i].begin);
}

bool LineScan::areAt(std::size_t i, std::string_view lower) const {
    while (!lower.empty()) {
        const std::size_t blank = std::min(lower.find(' '), lower.size());
        if (word(i++) != lower.substr(0, blank)) return false;
        lower.remove_prefix(std::min(blank + 1, lower.size()));
    }
    return true;
}

std::size_t LineScan::closingOf(std::size_t open) const {
    int depth = 0;
    for (std::size_t i = open; i < size(); ++i) {
        if (at(i).kind == TokenKind::Open) ++depth;
        if (at(i).kind == TokenKind::Close && --depth == 0) return i;
    }
    return size();
}

void LineScan::give(Span span, LinePartKind owner) {
    for (std::size_t i = span.begin; i < std::min(span.end, size()); ++i)
        if (tokens_[i].owner == LinePartKind::Blank) tokens_[i].owner = owner;
}

void LineScan::giveAnew(std::size_t i, LinePartKind owner) {
    if (i < size()) tokens_[i].owner = owner;
}

std::string LineScan::textOf(Span span) const {
    std::string text;
    for (std::size_t i = span.begin; i < std::min(span.end, size()); ++i) {
        // Where something was put aside or taken out between two tokens, a blank stands for it.
        const bool apart = i > span.begin && (at(i).spaced || at(i - 1).end != at(i).begin);
        if (apart) text += ' ';
        text += written(i);
    }
    return text;
}

void LineScan::addTo(std::string& field, Span span, LinePartKind owner,
                     std::string_view separator) {
    give(span, owner);
    if (span.isEmpty()) return;
    if (!field.empty()) field += separator;
    field += textOf(span);
}

/// What stands together is one entry: "[1]".
void LineScan::addRest(const Token& token) {
    const std::string_view piece = text_.substr(token.begin, token.end - token.begin);
    const bool first = reading_.rest.empty() || token.spaced || token.begin == 0;
    if (first)
        reading_.rest.emplace_back(piece);
    else
        reading_.rest.back() += piece;
}

void LineScan::finish() {
    give({0, size()}, LinePartKind::Rest);
    std::vector<Token> all;
    all.reserve(tokens_.size() + aside_.size());
    std::ranges::merge(tokens_, aside_, std::back_inserter(all), {}, &Token::begin, &Token::begin);
    tokens_ = std::move(all);
    std::size_t restEnd = 0;
    LinePartKind before = LinePartKind::Rest;
    for (Token& token : tokens_) {
        if (token.owner == LinePartKind::Blank) token.owner = before;
        before = token.owner;
        if (token.owner != LinePartKind::Rest) continue;
        token.spaced = token.begin != restEnd;
        addRest(token);
        restEnd = token.end;
    }
    writeParts();
}

void LineScan::writeParts() {
    std::vector<LinePart>& parts = reading_.parts;
    std::size_t end = 0;
    for (const Token& token : tokens_) {
        const bool same = !parts.empty() && parts.back().kind == token.owner;
        if (same) {
            parts.back().end = token.end;
        } else {
            if (end < token.begin) parts.push_back({LinePartKind::Blank, end, token.begin});
            parts.push_back({token.owner, token.begin, token.end});
        }
        end = token.end;
    }
    if (end < text_.size()) parts.push_back({LinePartKind::Blank, end, text_.size()});
}

}  // namespace nettare
