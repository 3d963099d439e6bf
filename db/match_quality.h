#pragma once

#include <string_view>
#include <vector>

#include "db/search/asked_words.h"

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

/// Ranks a food for the words asked for; `otherNames` has one name a line. The head word of a name
/// is the last before the first comma, bracket, "in" or "with": it says what the thing is. Tables
/// put a class before the thing ("Fish, salmon, pink, raw", "Beef, flank, steak"); after such a
/// class the next two parts of a name have head words, too.
[[nodiscard]] Match matchOf(const std::vector<AskedWord>& asked, std::string_view name,
                            std::string_view otherNames);

}  // namespace nettare
