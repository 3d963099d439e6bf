#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// A word that is searched for, and the words of foods that answer to it.
struct AskedWord {
    std::string typed;
    std::vector<std::string> whole;   ///< what it is: itself, singular, plural, words alike
    std::vector<std::string> begun;   ///< words alike to one that it begins
    std::vector<std::string> starts;  ///< beginnings that it may go on from; itself unless forgiven
};

/// Words of cooks, and the words of food tables that are found for them.
using AlikeWords = std::map<std::string, std::vector<std::string>, std::less<>>;

/// Reads lines of "word|also", as at the head of resources/kitchen_names/words.txt.
[[nodiscard]] AlikeWords readAlikeWords(std::string_view text);

/// Words of a text that are searched for.
inline constexpr std::size_t kMostWords = 16;

/// The words of a text with all that answers to them; at most the first kMostWords, each once. The
/// program's list of words alike is resources/kitchen_names/words.txt.
[[nodiscard]] std::vector<AskedWord> askedWords(std::string_view text);

/// A full-text query for foods that answer to every word.
[[nodiscard]] std::string askedQuery(const std::vector<AskedWord>& words);

}  // namespace nettare
