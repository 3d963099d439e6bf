#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// The words of a text as the index sees them: lower case, without the accents of Latin-1 letters,
/// cut at everything that is no letter and no digit.
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);

/// A full-text query for foods that hold each word as the start of one of theirs, or one of its
/// other forms whole.
[[nodiscard]] std::string indexQuery(const std::vector<std::string>& words);

}  // namespace nettare
