#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// How well a food is what was asked for, best first.
enum class MatchQuality {
    Named,  ///< one of its names holds all words whole, its head word among them: "peanut butter"
    Whole,  ///< the words are all there, whole: "butter" in "butter lettuce"
    Start,  ///< some word is only the start of one of its own: "butter" in "butternut squash"
};

/// Ranks a food for the words asked for (as searchWords gives them). The head word of a name is the
/// last before the first comma, bracket, "in" or "with": it says what the thing is.
[[nodiscard]] MatchQuality matchQuality(const std::vector<std::string>& asked,
                                        std::string_view name,
                                        const std::vector<std::string>& otherNames);

}  // namespace nettare
