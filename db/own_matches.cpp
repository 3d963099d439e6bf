#include "db/own_matches.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "db/match_quality.h"
#include "db/search/asked_words.h"
#include "db/search_words.h"

namespace nettare {

namespace {

bool contains(const std::vector<std::string>& words, const std::string& word) {
    return std::ranges::find(words, word) != words.end();
}

/// Whether some word of the names answers to the word asked for.
bool isHeldBy(const std::vector<std::string>& words, const AskedWord& asked) {
    return std::ranges::any_of(words, [&](const std::string& word) {
        return contains(asked.whole, word) || contains(asked.begun, word) ||
               std::ranges::any_of(
                   asked.starts, [&](const std::string& start) { return word.starts_with(start); });
    });
}

/// The other names that foods are found by, one a line, by the food that stands for them.
std::map<std::string, std::string> otherNames(const std::vector<OwnFoodRecord>& foods) {
    std::map<std::string, std::string> names;
    for (const OwnFoodRecord& own : foods) {
        const OwnFoodRecord* stands = &own;
        for (std::size_t i = 0; i < foods.size() && stands->stays; ++i) {
            const auto next = std::ranges::find(foods, *stands->stays, &OwnFoodRecord::id);
            if (next == foods.end()) break;
            stands = &*next;
        }
        std::string& list = names[stands->id()];
        if (stands != &own) (list += own.current.food.name) += '\n';
        for (const std::string& name : own.current.food.otherNames) (list += name) += '\n';
    }
    return names;
}

}  // namespace

FoodHit hitOf(const TableFood& food) {
    FoodHit hit;
    hit.row = food.row;
    hit.name = food.name;
    hit.group = food.group;
    hit.energyKcalPer100g = food.profile[Component::ENERC_KCAL];
    hit.knownComponents = static_cast<int>(std::ranges::count_if(
        food.profile.per100g, [](const auto& value) { return value.has_value(); }));
    return hit;
}

OwnMatches ownMatches(const std::vector<OwnFoodRecord>& foods, const std::string& words) {
    OwnMatches matches;
    const std::vector<AskedWord> asked = askedWords(words);
    if (asked.empty()) return matches;
    struct Ranked {
        Match match;
        bool beginsSo;  ///< its name begins with the first word asked for
        FoodHit hit;
    };
    std::vector<Ranked> ranked;
    const auto others = otherNames(foods);
    Matcher matcher{asked};
    for (const OwnFoodRecord& own : foods) {
        if (!own.inUse()) continue;
        const std::string& name = own.current.food.name;
        const std::string& more = others.at(own.id());
        const std::vector<std::string> held = searchWords(fmt::format("{}\n{}", name, more));
        const bool fits =
            std::ranges::all_of(asked, [&](const AskedWord& word) { return isHeldBy(held, word); });
        if (!fits) continue;
        const bool beginsSo = isHeldBy({held.front()}, asked.front());
        ranked.push_back({matcher.of(name, more), beginsSo, hitOf(own.current.food)});
    }
    std::ranges::stable_sort(ranked, {}, [](const Ranked& one) {
        return std::tuple{one.match.quality, one.match.slip, one.match.beyond, !one.beginsSo};
    });
    for (Ranked& one : ranked)
        (one.match.quality == MatchQuality::Start ? matches.started : matches.well)
            .push_back(std::move(one.hit));
    return matches;
}

}  // namespace nettare
