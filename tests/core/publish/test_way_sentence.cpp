#include "core/publish/way_sentence.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// The sentence on the way that counts for the only line.
std::string sentence(const Kitchen& kitchen) {
    const Served served{kitchen};
    return waySentence(served.dossier, 0, 0, served.way(0));
}

/// USDA SR28 11215 garlic, raw: 3 g a clove.
TableFood garlic() {
    TableFood food = kitchen::row("11215", "garlic, raw");
    kitchen::set(food, Component::ENERC_KCAL, 149);
    food.refusePercent = 13;
    food.refuseNote = "root plate and skin";
    food.measures = {{1, "clove", "", 3, 0, {}}, {1, "cup", "", 136, 0, {}}};
    return food;
}

Kitchen withGarlic(const std::string& line) {
    return Kitchen{}.row("garlic", garlic()).line(line);
}

Kitchen ownBulbs(const std::string& more, const std::string& pooled = {}) {
    Kitchen kitchen = Kitchen{}.reading("one", "100").reading("two", "104");
    kitchen.append("series", R"({"id":"s","name":"my bulbs","kind":"per piece","of":"bulb",
                                 "readings":["one","two"])" +
                                 pooled + "}");
    return kitchen.line(R"({"id":"f","piece":"bulb","food":"fennel",)" + more + "}");
}

}  // namespace

TEST_CASE("a measure of the table is told with its row and its spread", "[publish]") {
    CHECK(sentence(withGarlic(R"({"id":"g","amount":"2","piece":"clove","food":"garlic"})")) ==
          "2 cloves × 3 g (usda-sr 28 11215: 1 clove = 3 g); the table gives no spread, 14 % is "
          "assumed");
    CHECK(sentence(Kitchen{}.line(R"({"id":"s","amount":"3","unit":"tsp","food":"sugar"})")) ==
          "3 tsp × 4.2 g (usda-sr 28 19335: 1 tsp = 4.2 g); the table gives s = 0.3 g of 10");
}

TEST_CASE("a range says what it counts as", "[publish]") {
    CHECK(sentence(withGarlic(R"({"id":"g","amount":"2-3","piece":"clove","food":"garlic"})")) ==
          "2-3 cloves × 3 g (usda-sr 28 11215: 1 clove = 3 g); the table gives no spread, 14 % is "
          "assumed; 2-3 counts as 2.5");
}

TEST_CASE("a density is told with the measure that it comes from", "[publish]") {
    CHECK(sentence(Kitchen{}.line(R"({"id":"o","amount":"100","unit":"ml","food":"oil"})")) ==
          "100 ml × 0.913 g/ml (usda-sr 28 04053: 1 cup = 216 g); the table gives no spread, 7 % "
          "is assumed");
    CHECK(sentence(Kitchen{}
                       .json("measures", "\"metric\"")
                       .line(R"({"id":"o","amount":"1","unit":"cup","food":"oil",
                                 "density":{"g_per_ml":"0.92","within":"0.01",
                                 "reason":"vegetable oils: median of 12 rows"}})")) ==
          "1 cup of 250 ml × 0.92 g/ml ± 0.01, stated: vegetable oils: median of 12 rows");
}

TEST_CASE("a filling is told with its two ends", "[publish]") {
    CHECK(sentence(Kitchen{}.line(
              R"({"id":"o","amount":"1","unit":"tbsp","fill":"heaping","food":"oil"})")) ==
          "1 tbsp × 13.5 g (usda-sr 28 04053: 1 tbsp = 13.5 g); the table gives no spread, 7 % is "
          "assumed; heaping: × 1.25 to 2 (common practice)");
}

TEST_CASE("readings are told one by one", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("a", "41");
    kitchen.reading("b", "2.5", "", "edible portion", "fine");
    Kitchen two = kitchen;
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["a"]})");
    two.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["a","b"],
                 "weighed_for":"2"})");
    CHECK(sentence(kitchen) == "one reading: 41 g");
    CHECK(sentence(two) == "2 readings: 41 g + 2.5 g, for another amount: × 1.5");
}

TEST_CASE("a series is told with its readings and spread, and what the pieces are to it",
          "[publish]") {
    CHECK(sentence(ownBulbs(R"("amount":"6","series":{"id":"s","use":"others"})")) ==
          "6 bulbs × 102 g (my bulbs: 2 readings of 2, s = 2.83 g)");
    CHECK(sentence(ownBulbs(R"("amount":"6","series":{"id":"s","use":"among"})")) ==
          "6 bulbs × 102 g (my bulbs: 2 readings of 2, s = 2.83 g); 2 of them were weighed");
    CHECK(sentence(ownBulbs(R"("amount":"2","series":{"id":"s","use":"among"})")) ==
          "2 bulbs × 102 g (my bulbs: 2 readings of 2, s = 2.83 g); all of them were weighed, so "
          "that none scatters");
}

TEST_CASE("a series says what its spread is pooled with", "[publish]") {
    const std::string line = R"("amount":"6","series":{"id":"s","use":"others"})";
    // By hand: (5 x 9 + 1 x 8)/6 = 8.83; (8 x 14.28^2 + 8)/9 = 182.1.
    CHECK(
        sentence(ownBulbs(line, R"(,"pooled_with":{"name":"bulbs, 2025","s":"3","nu":"5"})")) ==
        "6 bulbs × 102 g (my bulbs: 2 readings of 2, s = 2.97 g pooled with that of bulbs, 2025)");
    CHECK(sentence(ownBulbs(line, R"(,"pooled":true)")) ==
          "6 bulbs × 102 g (my bulbs: 2 readings of 2, s = 13.5 g pooled with the usual one)");
}

TEST_CASE("a trim says what its spread is pooled with", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("bought", "1000", "", "as purchased");
    kitchen.reading("whole", "200").reading("core", "150");
    kitchen.append("series", R"({"id":"trim","name":"my trim","kind":"ratio",
        "pooled_with":{"name":"trim, 2025","s":"0.03","nu":"5"},
        "pairs":[{"before":"whole","after":"core"}]})");
    kitchen.line(R"({"id":"f","amount":"4","piece":"bulb","food":"fennel","weighed":["bought"],
                     "trim":"trim"})");
    CHECK(sentence(kitchen).ends_with(
        "; edible share 0.75 by my trim, its spread taken from trim, 2025"));
}

TEST_CASE("a series of one reading says that its spread is assumed", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("one", "218");
    kitchen.append("series", R"({"id":"s","name":"my bulbs","kind":"per piece","of":"bulb",
                                 "readings":["one"]})");
    kitchen.line(R"({"id":"f","amount":"6","piece":"bulb","food":"fennel",
                     "series":{"id":"s","use":"others"}})");
    CHECK(sentence(kitchen) ==
          "6 bulbs × 218 g (my bulbs: 1 reading of 1); one reading shows no spread, 14 % is "
          "assumed");
}

TEST_CASE("what is trimmed says its share, whose it is and what falls off", "[publish]") {
    Kitchen kitchen = Kitchen{}.row("garlic", garlic());
    kitchen.line(R"({"id":"g","amount":"100","unit":"g","food":"garlic","as_purchased":true})");
    CHECK(sentence(kitchen) ==
          "100 g as written, its last digit stands for ± 0.5 g; edible share 0.87 (refuse 13 %: "
          "root plate and skin)");
}

TEST_CASE("a tin says what it declares and what is left of it", "[publish]") {
    CHECK(sentence(Kitchen{}.line(
              R"({"id":"f","amount":"2","piece":"can","each":{"amount":"400","unit":"g"},
                  "food":"fennel","yield":{"to":"drained","factor":"0.6","within":"0.03",
                  "reason":"240 g drained, says the tin"}})")) ==
          "2 cans × 400 g as declared; to drained: × 0.6 (240 g drained, says the tin)");
}

TEST_CASE("a label's serving is told as printed", "[publish]") {
    Kitchen kitchen = Kitchen{}.append("foods", R"({"id":"butter","name":"butter","label":{
        "rules":"us","serving_grams":"10","serving":{"amount":"2","unit":"tsp"},
        "declares":[{"component":"FAT","printed":"8"}]}})");
    CHECK(sentence(kitchen.line(R"({"id":"b","amount":"3","unit":"tsp","food":"butter"})")) ==
          "3 tsp × 5 g (label: 2 tsp = 10 g)");
}

TEST_CASE("a pinch says whose pinch", "[publish]") {
    CHECK(sentence(withGarlic(R"({"id":"g","amount":"1","unit":"pinch","food":"garlic"})")) ==
          "1 pinch × 0.313 ml ± 50 % (part of a teaspoon of 5 mL (common practice), at least ±50 "
          "%) × 0.575 g/ml (usda-sr 28 11215: 1 cup = 136 g); the table gives no spread, 7 % is "
          "assumed");
    CHECK(sentence(withGarlic(R"({"id":"g","amount":"1","piece":"piece","food":"garlic",
                                  "size":"the size of a walnut"})")) ==
          "1 piece of that size × 22.5 ml ± 33 % (size of a thing (common practice, from memory)) "
          "× 0.575 g/ml (usda-sr 28 11215: 1 cup = 136 g); the table gives no spread, 7 % is "
          "assumed");
}

TEST_CASE("a pinch for each portion is told as parts of a teaspoon", "[publish]") {
    Kitchen kitchen = withGarlic(R"({"id":"g","to_taste":true,"food":"garlic"})");
    kitchen.json("counting", R"({"to_taste":"a pinch a portion"})");
    CHECK(sentence(kitchen) ==
          "a pinch for each portion = 0.313 tsp of 4.93 ml × 0.575 g/ml (usda-sr 28 11215: 1 cup "
          "= 136 g); the table gives no spread, 7 % is assumed");
}

TEST_CASE("what the line says twice and what the cook assumes say so", "[publish]") {
    CHECK(sentence(Kitchen{}.line(
              R"({"id":"f","amount":"1","piece":"handful","equals":{"amount":"30","unit":"g"},
                  "food":"fennel"})")) == "the line says 30 g as well");
    CHECK(sentence(Kitchen{}.line(
              R"({"id":"f","amount":"1","piece":"handful","food":"fennel",
                  "assumed":{"grams":"30","within":"10","reason":"my hand"}})")) ==
          "30 g ± 10 g, assumed: my hand");
}
