#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// Text without the ASCII white space at its two ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// ASCII letters in lower case; all other bytes stay.
[[nodiscard]] std::string lowerAscii(std::string_view text);

/// The pieces between separators, empty ones included; the whole text where there is none. They
/// point into `text`, as words() and trimmed() do.
[[nodiscard]] std::vector<std::string_view> split(std::string_view text, char separator);

/// Words between ASCII white space; no empty ones.
[[nodiscard]] std::vector<std::string_view> words(std::string_view text);

/// Number of code points of valid UTF-8 text: what limits on a text count. A letter with a
/// combining accent is two.
[[nodiscard]] std::size_t codePoints(std::string_view utf8);

/// Number of bytes at the front that are well-formed UTF-8 (RFC 3629: no surrogates, no overlong
/// forms); the size of the text where all are.
[[nodiscard]] std::size_t utf8Prefix(std::string_view bytes);

/// True where every character shows as itself, on one line: no control characters (C0, DEL, C1), no
/// line or paragraph separators, no embeddings, overrides or isolates of the writing direction
/// (Unicode Standard, section 23.2). Right-to-left letters are fine.
[[nodiscard]] bool isPlainLine(std::string_view utf8);

/// At most `most` code points, followed by an ellipsis where something was cut. What isPlainLine()
/// refuses becomes a space and bytes that are not UTF-8 become U+FFFD, so that a message stays one
/// readable line whatever it quotes.
[[nodiscard]] std::string shortened(std::string_view bytes, std::size_t most);

/// Replaces every occurrence of `from` (not empty) by `to`; what was put in is not searched again.
[[nodiscard]] std::string replaced(std::string_view text, std::string_view from,
                                   std::string_view to);

}  // namespace nettare
