#include "db/search/kitchen_names.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <unordered_map>
#include <utility>

#include "core/support/text.h"
#include "db/search/embedded_words.h"
#include "db/search_words.h"
#include "db/word_forms.h"

namespace nettare {

namespace {

using Words = std::vector<std::string>;

KitchenName readName(std::string_view line) {
    const std::size_t bar = line.find('|');
    if (bar == std::string_view::npos) return {};
    KitchenName name;
    name.name = std::string{trimmed(line.substr(0, bar))};
    for (const std::string_view part : split(trimmed(line.substr(bar + 1)), ' ')) {
        if (part.empty()) continue;
        if (part.starts_with('!')) {
            name.never.emplace_back(part.substr(1));
            continue;
        }
        KitchenName::AnyOf anyOf;
        for (const std::string_view word : split(part, '/')) anyOf.emplace_back(word);
        if (name.head.empty())
            name.head = std::move(anyOf);
        else
            name.others.push_back(std::move(anyOf));
    }
    return name;
}

/// The words of a text with their singulars and plurals.
Words wordsAndForms(std::string_view text) {
    Words words = searchWords(text);
    const std::size_t count = words.size();
    for (std::size_t i = 0; i < count; ++i)
        std::ranges::move(otherForms(words[i]), std::back_inserter(words));
    return words;
}

bool holds(const Words& words, const std::string& word) {
    return std::ranges::find(words, word) != words.end();
}

bool holdsAny(const Words& words, const KitchenName::AnyOf& anyOf) {
    return std::ranges::any_of(anyOf, [&](const std::string& word) { return holds(words, word); });
}

bool isFor(const KitchenName& name, const Words& words) {
    return std::ranges::all_of(name.others,
                               [&](const auto& anyOf) { return holdsAny(words, anyOf); }) &&
           std::ranges::none_of(name.never,
                                [&](const std::string& word) { return holds(words, word); });
}

/// The list, found by the words that may be the head of a food's name.
class NamesByHead {
public:
    explicit NamesByHead(std::string_view text) : names_{readKitchenNames(text)} {
        for (std::size_t i = 0; i < names_.size(); ++i)
            for (const std::string& head : names_[i].head) byHead_[head].push_back(i);
    }

    [[nodiscard]] Words of(std::string_view foodName) const {
        std::vector<std::size_t> places;
        for (const std::string& head : wordsAndForms(foodName.substr(0, foodName.find(',')))) {
            const auto found = byHead_.find(head);
            if (found != byHead_.end())
                places.insert(places.end(), found->second.begin(), found->second.end());
        }
        if (places.empty()) return {};
        std::ranges::sort(places);
        places.erase(std::unique(places.begin(), places.end()), places.end());
        const Words words = wordsAndForms(foodName);
        Words given;
        for (const std::size_t place : places)
            if (isFor(names_[place], words) && !holds(given, names_[place].name))
                given.push_back(names_[place].name);
        return given;
    }

private:
    std::vector<KitchenName> names_;
    std::unordered_map<std::string, std::vector<std::size_t>> byHead_;
};

}  // namespace

std::vector<KitchenName> readKitchenNames(std::string_view text) {
    std::vector<KitchenName> names;
    for (const std::string_view line : split(text, '\n')) {
        if (line.starts_with('#') || line == "name|words") continue;
        KitchenName name = readName(line);
        if (!name.name.empty() && !name.head.empty()) names.push_back(std::move(name));
    }
    return names;
}

std::vector<std::string> kitchenNamesOf(std::string_view foodName) {
    static const NamesByHead kNames{kitchenNamesText()};
    return kNames.of(foodName);
}

}  // namespace nettare
