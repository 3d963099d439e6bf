#include "db/search/asked_words.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "db/search/embedded_words.h"
#include "db/search_words.h"

namespace nettare {

TEST_CASE("a word is asked for with its forms and the words alike", "[search]") {
    const auto asked = askedWords("Tinned tomatos");
    REQUIRE(asked.size() == 2);
    CHECK(asked[0].typed == "tinned");
    CHECK(std::ranges::count(asked[0].whole, "canned") == 1);
    CHECK(std::ranges::count(asked[1].whole, "tomatoes") == 1);
    CHECK(asked[1].starts == std::vector<std::string>{"tomatos"});
}

TEST_CASE("a word alike counts from three letters on, as one that is begun", "[search]") {
    CHECK(askedWords("ti")[0].begun.empty());
    const auto asked = askedWords("tinn");
    CHECK(std::ranges::count(asked[0].begun, "canned") == 1);
    CHECK(std::ranges::count(asked[0].whole, "canned") == 0);
}

TEST_CASE("the query asks for starts and whole words, each once", "[search]") {
    CHECK(askedQuery(askedWords("leaf")) == "(\"leaf\" * OR \"leaves\" OR \"leave\")");
    CHECK(askedQuery(askedWords("olive oil")) == "(\"olive\" *) AND (\"oil\" *)");
    CHECK(askedQuery(askedWords("peas pea peas")) == "(\"peas\" * OR \"pea\") AND (\"pea\" *)");
}

TEST_CASE("only so many words are asked for", "[search]") {
    std::string many;
    for (int i = 0; i < 100; ++i) many += " w" + std::to_string(i);
    CHECK(askedWords(many).size() == 16);
    CHECK(askedWords("").empty());
}

TEST_CASE("every line of words alike can be read and found", "[search]") {
    const AlikeWords words = readAlikeWords(alikeWordsText());
    CHECK(words.size() >= 30);
    for (const auto& [word, also] : words) {
        INFO(word);
        CHECK(searchWords(word) == std::vector{word});
        CHECK_FALSE(also.empty());
        for (const std::string& one : also) CHECK(searchWords(one) == std::vector{one});
    }
}

}  // namespace nettare
