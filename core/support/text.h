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

/// The pieces between separators, empty ones included.
[[nodiscard]] std::vector<std::string_view> split(std::string_view text, char separator);

/// Words between ASCII white space; no empty ones.
[[nodiscard]] std::vector<std::string_view> words(std::string_view text);

/// Number of code points of valid UTF-8 text.
[[nodiscard]] std::size_t codePoints(std::string_view utf8);

/// Number of bytes at the front that are well-formed UTF-8 (RFC 3629: no surrogates, no overlong
/// forms); the size of the text where all are.
[[nodiscard]] std::size_t utf8Prefix(std::string_view bytes);

/// At most `most` code points, followed by an ellipsis where something was cut; control characters
/// are replaced by a space, so that a message stays one line.
[[nodiscard]] std::string shortened(std::string_view utf8, std::size_t most);

/// Replaces every occurrence of `from` (not empty) by `to`.
[[nodiscard]] std::string replaced(std::string_view text, std::string_view from,
                                   std::string_view to);

}  // namespace nettare
