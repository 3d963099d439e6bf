#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// A text as the index sees it, into `result`: lower case, without the accents of Latin-1 letters.
void foldInto(std::string& result, std::string_view text);

/// True for what words are made of: letters and digits, and every byte beyond ASCII.
[[nodiscard]] constexpr bool isWordByte(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) > 0x7F;
}

/// The words of a folded text, cut at everything that is no letter and no digit.
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);

/// A full-text query for rows that hold each word as the start of one of theirs, or one of its
/// other forms whole.
[[nodiscard]] std::string indexQuery(const std::vector<std::string>& words);

}  // namespace nettare
