#pragma once

#include <cstddef>
#include <string_view>

namespace nettare {

// Signs of a line that are more than one byte of UTF-8. Each answers the number of bytes that the
// sign at the front of `bytes` (not empty) has, 0 where there is none.

/// Blanks: ASCII, no-break, thin and the other spaces of U+2000 to U+200B, byte order mark.
[[nodiscard]] std::size_t blankLength(std::string_view bytes);

/// Hyphen-minus, hyphen and no-break hyphen: what joins words.
[[nodiscard]] std::size_t hyphenLength(std::string_view bytes);

/// Hyphen-minus, hyphens and dashes of U+2010 to U+2015, minus.
[[nodiscard]] std::size_t dashLength(std::string_view bytes);

/// "¼" and its like; what core/quantity/amount.h reads.
[[nodiscard]] std::size_t vulgarLength(std::string_view bytes);

/// Bullets and boxes at the front of lists.
[[nodiscard]] std::size_t bulletLength(std::string_view bytes);

/// Asterisk, daggers, section sign, raised figures.
[[nodiscard]] std::size_t footnoteLength(std::string_view bytes);

/// "/" and the fraction slash U+2044.
[[nodiscard]] std::size_t slashLength(std::string_view bytes);

/// Other signs of one character that stand for themselves: "×", quotes, prime signs, "≈", "°".
[[nodiscard]] std::size_t otherSignLength(std::string_view bytes);

}  // namespace nettare
