#pragma once

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

#include "db/search/asked_words.h"
#include "db/search/name_words.h"

namespace nettare {

/// How well a food is what was asked for, best first.
enum class MatchQuality {
    Named,  ///< one of its names holds all words whole, its head word among them: "peanut butter"
    Whole,  ///< the words are all there, whole: "butter" in "butter lettuce"
    Begun,  ///< one of its names holds all, its head word is begun: "butter" in "butternuts, raw"
    Start,  ///< some word is only the start of one of its own: "butter" in "butternut squash"
};

/// A food that holds the words, as it is ranked.
struct Match {
    MatchQuality quality = MatchQuality::Start;
    /// What its name says beyond the words asked for: 0 for exactly the thing. Words before those
    /// asked for weigh more than those behind, and "raw", "whole" or bracketed words nothing.
    int beyond = 0;
    /// Of the beginnings that a forgiven word may go on from, the place of the one it does.
    int slip = 0;
};

/// Ranks foods for the words asked for. The head word of a name is the last before the first comma,
/// bracket, "in" or "with": it says what the thing is. Tables put a class before the thing ("Fish,
/// salmon, pink, raw", "Beef, flank, steak"); after such a class the next two parts of a name have
/// head words, too.
class Matcher {
public:
    /// `asked` must outlive it; at most kMostWords.
    explicit Matcher(const std::vector<AskedWord>& asked) : asked_{asked} {}

    /// `otherNames` has one name a line.
    [[nodiscard]] Match of(std::string_view name, std::string_view otherNames);

private:
    /// Bit i stands for the word asked for at i.
    using Mask = std::uint32_t;

    /// What the words of one name answer.
    struct NameMatch {
        Mask whole = 0, begun = 0;
        bool headWhole = false, headBegun = false;
        int beyond = 0;
        int telling = 0;                      ///< words that tell things apart
        std::array<int, kMostWords> slips{};  ///< for each word, the best place of a start
    };

    [[nodiscard]] NameMatch ofOne(std::string_view name);
    [[nodiscard]] Mask read(const NameWord& word, NameMatch& match) const;

    const std::vector<AskedWord>& asked_;
    NameWords split_;
    std::vector<bool> answered_;
};

}  // namespace nettare
