#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// A word of a table with the number of its foods that have it.
struct WordFound {
    std::string word;
    int foods = 0;
};

/// A sorted list of words.
struct WordList {
    /// The first word that is not before `from`.
    std::function<std::optional<WordFound>(const std::string& from)> seek;
    /// Of the words that begin so, the one that most foods have.
    std::function<std::optional<WordFound>(const std::string& beginning)> mostUsed;
};

/// A beginning of words that is one slip from what was typed.
struct NearWord {
    std::string beginning;
    std::string
        word;  ///< the beginning where it is a word of the list, or the most used that goes on
    bool whole = false;  ///< the beginning is a word of the list
    int cost = 0;        ///< how unlikely the slip is: 0 is a letter doubled or not
    int foods = 0;
};

/// Letters of a word before a slip in it is forgiven.
inline constexpr std::size_t kFewestLettersOfSlip = 4;

/// What was meant, if one letter is wrong, missing or too many, or two neighbours changed places
/// (distance 1, optimal string alignment); also of a word that is not finished. Each word once,
/// best first: the likelier slip, then the word that more foods have. Of one letter less than
/// kFewestLettersOfSlip only whole words that it misses a letter of; none for fewer, and for a word
/// with a digit.
[[nodiscard]] std::vector<NearWord> nearWords(std::string_view typed, const WordList& list);

}  // namespace nettare
