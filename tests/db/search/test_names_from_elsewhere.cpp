#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <set>
#include <sstream>

#include "core/support/text.h"
#include "db/search/asked_words.h"
#include "db/search/embedded_words.h"
#include "db/search/kitchen_names.h"
#include "db/search_words.h"
#include "search/phrases.h"

namespace nettare {

namespace {

using SplitWords = std::vector<std::string>;

std::set<std::string> namesBefore() {
    std::ifstream file{NETTARE_TEST_DATA "/search/names_before_phrases.txt"};
    std::stringstream text;
    text << file.rdbuf();
    std::set<std::string> names;
    for (const KitchenName& name : readKitchenNames(text.str())) names.insert(name.name);
    return names;
}

/// True if all words of `part` stand in `whole` behind each other.
bool standsIn(const SplitWords& part, const SplitWords& whole) {
    return std::search(whole.begin(), whole.end(), part.begin(), part.end()) != whole.end();
}

bool standsInHalf(const SplitWords& name, bool heldOut) {
    return std::ranges::any_of(readPhrases(), [&](const Phrase& phrase) {
        return phrase.heldOut == heldOut && standsIn(name, searchWords(phrase.words));
    });
}

}  // namespace

TEST_CASE("no kitchen name was taken from the phrases that are held out", "[phrases]") {
    const std::set<std::string> before = namesBefore();
    CHECK(before.size() >= 300);
    int later = 0, taken = 0;
    for (const KitchenName& name : readKitchenNames(kitchenNamesText())) {
        if (before.contains(name.name)) continue;
        ++later;
        const SplitWords words = searchWords(name.name);
        if (standsInHalf(words, true) && !standsInHalf(words, false)) ++taken;
    }
    INFO(later << " names came after the phrases");
    CHECK(taken == 0);
}

TEST_CASE("no word alike was taken from the phrases that are held out", "[phrases]") {
    int taken = 0;
    for (const auto& [word, also] : readAlikeWords(alikeWordsText()))
        if (standsInHalf({word}, true) && !standsInHalf({word}, false)) ++taken;
    CHECK(taken == 0);
}

}  // namespace nettare
