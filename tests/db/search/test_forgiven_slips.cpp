#include <catch2/catch.hpp>
#include <tuple>
#include <utility>

#include "db/food_tables.h"

namespace nettare {

namespace {

FoodTables openStarterTables() {
    auto tables = FoodTables::open({NETTARE_STARTER_TABLE});
    REQUIRE(tables);
    return std::move(*tables);
}

FoodSearch searched(const FoodTables& tables, const char* words, const UsedRows& used = {}) {
    auto search = tables.search(words, 10, used);
    REQUIRE(search);
    return std::move(*search);
}

}  // namespace

TEST_CASE("a slip is forgiven, and told", "[search]") {
    const FoodTables tables = openStarterTables();
    for (const auto& [typed, word, number] : {std::tuple{"courgete", "courgette", "11477"},
                                              {"brocoli", "broccoli", "11090"},
                                              {"cinamon", "cinnamon", "02010"},
                                              {"parsely", "parsley", "11297"}}) {
        INFO(typed);
        const FoodSearch search = searched(tables, typed);
        REQUIRE_FALSE(search.hits.empty());
        CHECK(search.hits.front().row.number == number);
        REQUIRE(search.slips.size() == 1);
        CHECK(search.slips.front().typed == typed);
        REQUIRE_FALSE(search.slips.front().taken.empty());
        CHECK(search.slips.front().taken.front() == word);
    }
}

TEST_CASE("a slip among other words is forgiven in its own word", "[search]") {
    const FoodSearch search = searched(openStarterTables(), "brown suger");
    REQUIRE_FALSE(search.hits.empty());
    CHECK(search.hits.front().row.number == "19334");
    REQUIRE(search.slips.size() == 1);
    CHECK(search.slips.front().typed == "suger");
}

TEST_CASE("where each word is known, but not together, one of them may be a slip", "[search]") {
    const FoodSearch search = searched(openStarterTables(), "beet stock");
    REQUIRE_FALSE(search.hits.empty());
    CHECK(search.hits.front().name.find("beef") != std::string::npos);
    REQUIRE(search.slips.size() == 1);
    CHECK(search.slips.front().typed == "beet");
    CHECK(search.slips.front().taken == std::vector<std::string>{"beef"});
}

TEST_CASE("what finds something is no slip, and two slips in a word are too many", "[search]") {
    const FoodTables tables = openStarterTables();
    CHECK(searched(tables, "butter").slips.empty());
    CHECK(searched(tables, "tomatos").slips.empty());  // a plural
    const FoodSearch far = searched(tables, "xylophone");
    CHECK(far.hits.empty());
    CHECK(far.slips.empty());
    CHECK(searched(tables, "courgete xylophone").hits.empty());
}

TEST_CASE("of foods as good as each other, those that this cook used come first", "[search]") {
    const FoodTables tables = openStarterTables();
    CHECK(searched(tables, "butter").hits.front().row.number == "01145");
    const UsedRows used{{"usda-sr 28 01001", 4}};
    CHECK(searched(tables, "butter", used).hits.front().row.number == "01001");
    // Use does not bring a food before one that is what was asked for.
    const UsedRows other{{"usda-sr 28 11485", 99}};
    CHECK(searched(tables, "butter", other).hits.front().row.number == "01145");
}

}  // namespace nettare
