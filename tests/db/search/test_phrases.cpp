#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "search/phrases.h"
#include "sr28.h"

namespace nettare {

namespace {

struct Counted {
    int right = 0, all = 0;

    [[nodiscard]] double percent() const { return 100.0 * right / all; }
};

bool isAmongFirstThree(const FoodTables& tables, const Phrase& phrase) {
    const auto search = tables.search(phrase.words, 3);
    REQUIRE(search);
    return std::ranges::any_of(search->hits, [&](const FoodHit& hit) {
        return std::ranges::find(phrase.numbers, hit.row.number) != phrase.numbers.end();
    });
}

}  // namespace

TEST_CASE("a cook's phrase finds the row it means among the first three", "[phrases]") {
    if (!hasSr28()) return;
    const FoodTables tables = openStarterAndSr28();
    Counted development, heldOut;
    for (const Phrase& phrase : readPhrases()) {
        const bool right = isAmongFirstThree(tables, phrase);
        Counted& counted = phrase.heldOut ? heldOut : development;
        ++counted.all;
        counted.right += right ? 1 : 0;
        if (!right && !phrase.heldOut) WARN("not among the first three: " << phrase.words);
    }
    WARN("development " << development.right << " of " << development.all << ", held out "
                        << heldOut.right << " of " << heldOut.all);
    CHECK(development.all + heldOut.all >= 200);
    CHECK(heldOut.all >= 200);
    CHECK(heldOut.percent() >= 90);
    CHECK(development.percent() >= 90);
}

TEST_CASE("with the full table a food shows once, as the starter has it", "[phrases]") {
    if (!hasSr28()) return;
    const FoodTables tables = openStarterAndSr28();
    CHECK(tables.size() == 8789);  // USDA SR28 documentation, table 3
    for (const char* words : {"onion", "butter", "chicken", "milk", "bean", "a"}) {
        const auto search = tables.search(words, 300);
        REQUIRE(search);
        std::set<std::string> rows;
        for (const FoodHit& hit : search->hits) CHECK(rows.insert(hit.row.text()).second);
        CHECK(rows.size() > 50);
    }
    const auto onion = tables.search("onion raw", 1);
    REQUIRE(onion);
    CHECK(onion->hits.front().name == "onion, raw");
}

}  // namespace nettare
