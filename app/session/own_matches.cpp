#include "app/session/own_matches.h"

#include <algorithm>
#include <map>

#include "app/session/own_foods.h"
#include "db/match_quality.h"
#include "db/search_words.h"
#include "db/word_forms.h"

namespace nettare {

namespace {

/// Whether some word of the names begins with the word asked for, or is its other number.
bool isHeldBy(const std::vector<std::string>& words, const std::string& asked) {
    return std::ranges::any_of(words, [&](const std::string& word) {
        return word.starts_with(asked) || sameWord(word, asked);
    });
}

/// The names that foods are found by, by the food that stands for them.
std::map<std::string, std::vector<std::string>> otherNames(
    const std::vector<OwnFoodRecord>& foods) {
    std::map<std::string, std::vector<std::string>> names;
    for (const OwnFoodRecord& own : foods) {
        const OwnFoodRecord* stands = &own;
        for (std::size_t i = 0; i < foods.size() && stands->stays; ++i) {
            const auto next = std::ranges::find(foods, *stands->stays, &OwnFoodRecord::id);
            if (next == foods.end()) break;
            stands = &*next;
        }
        auto& list = names[stands->id()];
        if (stands != &own) list.push_back(own.current.food.name);
        for (const std::string& name : own.current.food.otherNames) list.push_back(name);
    }
    return names;
}

/// Whether the name begins with the words as they were asked for.
bool beginsWith(const std::string& name, const std::vector<std::string>& asked) {
    const std::vector<std::string> words = searchWords(name);
    return words.size() >= asked.size() && std::equal(asked.begin(), asked.end(), words.begin());
}

}  // namespace

OwnMatches ownMatches(const std::vector<OwnFoodRecord>& foods, const std::string& words) {
    OwnMatches matches;
    const std::vector<std::string> asked = searchWords(words);
    if (asked.empty()) return matches;
    const auto others = otherNames(foods);
    for (const OwnFoodRecord& own : foods) {
        if (!own.inUse()) continue;
        const std::vector<std::string>& more = others.at(own.id());
        std::vector<std::string> held = searchWords(own.current.food.name);
        for (const std::string& name : more)
            for (std::string& word : searchWords(name)) held.push_back(std::move(word));
        if (!std::ranges::all_of(asked,
                                 [&](const std::string& word) { return isHeldBy(held, word); }))
            continue;
        const bool started =
            matchQuality(asked, own.current.food.name, more) == MatchQuality::Start;
        (started ? matches.started : matches.well).push_back(hitOf(own.current.food));
    }
    std::ranges::stable_partition(matches.well,
                                  [&](const FoodHit& hit) { return beginsWith(hit.name, asked); });
    return matches;
}

}  // namespace nettare
