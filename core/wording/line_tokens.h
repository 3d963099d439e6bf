#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "core/wording/line_reading.h"

namespace nettare {

enum class TokenKind {
    Word,    ///< letters, digits after them, inner hyphens, apostrophes and points, other bytes
    Number,  ///< "2", "1,5", "1/2", one vulgar fraction: digits and marks without a blank
    Dash,    ///< hyphen, en or em dash, minus
    Comma,   ///< comma or semicolon
    Open,    ///< round or square bracket
    Close,
    Mark,   ///< any other sign
    Inert,  ///< list and footnote marks; and all beyond the length that is read
};

/// Bytes [begin, end) of a line.
struct Token {
    std::size_t begin, end;
    TokenKind kind;
    bool spaced;         ///< white space stands before it
    LinePartKind owner;  ///< Blank until a field takes it
};

/// Of longer lines the further bytes go to the rest unread: nobody types a thousand letters.
constexpr std::size_t kMostLineBytes = 1000;

/// The text without its white space (also no-break and thin spaces), in order. Any bytes will do.
[[nodiscard]] std::vector<Token> tokensOf(std::string_view text);

}  // namespace nettare
