#include "db/match_quality.h"

#include <algorithm>
#include <array>
#include <iterator>

#include "db/search_words.h"
#include "db/word_forms.h"

namespace nettare {

namespace {

bool holds(const std::vector<std::string>& words, const std::string& asked) {
    return std::ranges::any_of(words,
                               [&](const std::string& word) { return sameWord(word, asked); });
}

bool holdsAll(const std::vector<std::string>& words, const std::vector<std::string>& asked) {
    return std::ranges::all_of(asked, [&](const std::string& word) { return holds(words, word); });
}

/// The word that says what the thing is; empty for a name without words.
std::string headWord(std::string_view name) {
    constexpr std::array<std::string_view, 4> kEnds{",", "(", " in ", " with "};
    for (const std::string_view end : kEnds) name = name.substr(0, name.find(end));
    const std::vector<std::string> words = searchWords(name);
    return words.empty() ? std::string{} : words.back();
}

bool isNamed(std::string_view name, const std::vector<std::string>& asked) {
    return holdsAll(searchWords(name), asked) && holds(asked, headWord(name));
}

}  // namespace

MatchQuality matchQuality(const std::vector<std::string>& asked, std::string_view name,
                          const std::vector<std::string>& otherNames) {
    std::vector<std::string> all = searchWords(name);
    bool named = isNamed(name, asked);
    for (const std::string& other : otherNames) {
        named = named || isNamed(other, asked);
        std::ranges::copy(searchWords(other), std::back_inserter(all));
    }
    if (named) return MatchQuality::Named;
    return holdsAll(all, asked) ? MatchQuality::Whole : MatchQuality::Start;
}

}  // namespace nettare
