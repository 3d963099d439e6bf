#include "db/search/near_words.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

namespace nettare {

namespace {

using Foods = std::map<std::string, int>;

/// A list of these words with the numbers of their foods.
WordList listOf(const Foods& foods) {
    return {.seek = [&foods](const std::string& from) -> std::optional<WordFound> {
                const auto at = foods.lower_bound(from);
                if (at == foods.end()) return std::nullopt;
                return WordFound{at->first, at->second};
            },
            .mostUsed = [&foods](const std::string& start) -> std::optional<WordFound> {
                std::optional<WordFound> most;
                for (const auto& [word, count] : foods)
                    if (word.starts_with(start) && (!most || count > most->foods))
                        most = WordFound{word, count};
                return most;
            }};
}

std::vector<std::string> taken(const char* typed, const Foods& foods) {
    std::vector<std::string> words;
    for (const NearWord& near : nearWords(typed, listOf(foods))) words.push_back(near.word);
    return words;
}

using Words = std::vector<std::string>;

}  // namespace

TEST_CASE("one letter wrong, missing, too many or two swapped is one slip", "[search]") {
    const Foods foods{{"courgette", 3}};
    for (const char* typed : {"courgete", "courgettte", "courgatte", "ocurgette", "ourgette",
                              "courgettex", "xcourgette", "courgetet"}) {
        INFO(typed);
        CHECK(taken(typed, foods) == Words{"courgette"});
    }
    CHECK(taken("corgete", foods).empty());  // two slips
    CHECK(taken("courgette", foods).empty());
    CHECK(taken("dinner", foods).empty());
}

TEST_CASE("a slip in a word that is not finished is forgiven", "[search]") {
    const Foods foods{{"courgette", 3}, {"courgettes", 9}};
    const auto near = nearWords("coruge", listOf(foods));
    REQUIRE(near.size() == 1);
    CHECK(near[0].beginning == "courge");
    CHECK(near[0].word == "courgettes");  // most foods have it
    CHECK_FALSE(near[0].whole);
    CHECK(taken("couge", foods) == Words{"courgettes"});
}

TEST_CASE("nothing is forgiven below four letters, or in a number", "[search]") {
    const Foods foods{{"egg", 5}, {"eggs", 2}, {"1234", 1}};
    CHECK(taken("egh", foods).empty());
    CHECK(taken("ggs", foods) == Words{"eggs"});  // of the four letters of "eggs" one is missing
    CHECK(taken("gs", foods).empty());
    CHECK(taken("1235", foods).empty());
    CHECK(taken("eggz", foods) == Words{"egg", "eggs"});
    CHECK(taken("", foods).empty());
}

TEST_CASE("the likelier slip comes first, then the word of more foods", "[search]") {
    CHECK(taken("suger", {{"super", 9}, {"sugar", 1}}) == Words{"sugar", "super"});
    CHECK(taken("bakon", {{"bacon", 2}, {"baron", 7}}) == Words{"baron", "bacon"});
    CHECK(taken("hony", {{"honey", 1}, {"pony", 50}}) == Words{"honey", "pony"});
    CHECK(taken("honney", {{"honey", 1}, {"honneur", 9}}) == Words{"honey", "honneur"});
}

TEST_CASE("letters beyond ASCII are one letter each", "[search]") {
    const Foods foods{{"\xD0\xBB\xD1\x83\xD0\xBA\xD0\xB8", 1}};  // four Cyrillic letters
    CHECK(taken("\xD0\xBB\xD1\x83\xD0\xBF\xD0\xB8", foods).size() == 1);
    CHECK(taken("\xD0\xBB\xD1\x83", foods).empty());
}

}  // namespace nettare
