#include <algorithm>
#include <catch2/catch.hpp>
#include <utility>

#include "db/word_forms.h"

using namespace nettare;

TEST_CASE("singular and plural of kitchen words are the same word", "[search]") {
    const std::pair<const char*, const char*> kPairs[] = {
        {"onion", "onions"},     {"tomato", "tomatoes"}, {"berry", "berries"}, {"leaf", "leaves"},
        {"peach", "peaches"},    {"radish", "radishes"}, {"box", "boxes"},     {"knife", "knives"},
        {"chive", "chives"},     {"olive", "olives"},    {"pea", "peas"},      {"egg", "eggs"},
        {"avocado", "avocados"}, {"loaf", "loaves"}};
    for (const auto& [one, many] : kPairs) {
        INFO(many);
        CHECK(sameWord(one, many));
        CHECK(sameWord(many, one));
        CHECK(sameWord(one, one));
    }
}

TEST_CASE("words that only begin alike are not the same", "[search]") {
    CHECK_FALSE(sameWord("pea", "pear"));
    CHECK_FALSE(sameWord("butter", "butternut"));
    CHECK_FALSE(sameWord("cress", "cres"));
    CHECK_FALSE(sameWord("", "s"));
    CHECK_FALSE(sameWord("bean", "beaning"));
}

TEST_CASE("all forms of a word are found from any of them", "[search]") {
    using Forms = std::vector<std::string>;
    CHECK(allForms("tomato") == Forms{"tomato", "tomatoes"});
    CHECK(std::ranges::count(allForms("tomatos"), "tomatoes") == 1);
    CHECK(std::ranges::count(allForms("berries"), "berry") == 1);
    CHECK(std::ranges::count(allForms("berry"), "berries") == 1);
    CHECK(std::ranges::count(allForms("leaf"), "leaves") == 1);
    CHECK(allForms("") == Forms{""});
}
