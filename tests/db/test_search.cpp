#include <algorithm>
#include <catch2/catch.hpp>
#include <tuple>
#include <utility>

#include "starter.h"

using namespace nettare;

namespace {

using WordsAndBest = std::pair<const char*, const char*>;

bool holdsNumber(const std::vector<std::string>& numbers, const std::string& number) {
    return std::ranges::find(numbers, number) != numbers.end();
}

}  // namespace

TEST_CASE("the plain food comes first for its plain name", "[search]") {
    const FoodTable table = openStarter();
    for (const auto& [words, best] : {WordsAndBest{"onion", "11282"},
                                      {"garlic", "11215"},
                                      {"butter", "01145"},
                                      {"egg", "01123"},
                                      {"milk", "01077"},
                                      {"flour", "20081"},
                                      {"sugar", "19335"},
                                      {"salt", "02047"},
                                      {"rice", "20044"},
                                      {"tomato", "11529"},
                                      {"carrot", "11124"},
                                      {"olive oil", "04053"},
                                      {"chicken", "05006"},
                                      {"shrimp", "15270"},
                                      {"apple", "09003"},
                                      {"basil", "02044"},
                                      {"potato", "11353"},
                                      {"lemon", "09150"},
                                      {"honey", "19296"},
                                      {"spinach", "11457"},
                                      {"chocolate", "19078"}}) {
        INFO(words);
        const auto numbers = found(table, words);
        REQUIRE_FALSE(numbers.empty());
        CHECK(numbers.front() == best);
    }
}

TEST_CASE("raw comes before cooked and preserved", "[search]") {
    const FoodTable table = openStarter();
    for (const auto& [words, raw, done] : {std::tuple{"carrots", "11124", "11125"},
                                           {"spinach", "11457", "11458"},
                                           {"cod", "15015", "15016"},
                                           {"sweet corn", "11167", "11172"},
                                           {"bacon", "10123", "10862"},
                                           {"peaches", "09236", "09238"},
                                           {"quinoa", "20035", "20137"}}) {
        INFO(words);
        const auto numbers = found(table, words, 50);
        const auto first = std::ranges::find(numbers, raw);
        const auto second = std::ranges::find(numbers, done);
        REQUIRE(first != numbers.end());
        REQUIRE(second != numbers.end());
        CHECK(first < second);
    }
}

TEST_CASE("British, American and other kitchen names find the food", "[search]") {
    const FoodTable table = openStarter();
    for (const auto& [words, number] : {WordsAndBest{"prawn", "15270"},
                                        {"aubergine", "11209"},
                                        {"courgettes", "11477"},
                                        {"coriander leaf", "11165"},
                                        {"fresh coriander", "11165"},
                                        {"rocket", "11959"},
                                        {"spring onion", "11291"},
                                        {"minced beef", "23572"},
                                        {"beef mince", "23572"},
                                        {"icing sugar", "19336"},
                                        {"caster sugar", "19335"},
                                        {"bicarbonate", "18372"},
                                        {"sultana", "09297"},
                                        {"swede", "11435"},
                                        {"beetroot", "11080"},
                                        {"passata", "11547"},
                                        {"double cream", "01053"},
                                        {"single cream", "01050"},
                                        {"plain flour", "20081"},
                                        {"cornflour", "20027"},
                                        {"mangetout", "11300"},
                                        {"silverbeet", "11147"},
                                        {"satsuma", "09218"},
                                        {"groundnut", "16087"},
                                        {"bhindi", "11278"},
                                        {"jeera", "02014"},
                                        {"gelatine", "19177"},
                                        {"gammon", "10182"},
                                        {"chilli powder", "02009"},
                                        {"demerara", "19908"},
                                        {"ghee", "01003"},
                                        {"chickpea", "16056"},
                                        {"garbanzo", "16056"}}) {
        INFO(words);
        CHECK(holdsNumber(found(table, words, 10), number));
    }
}

TEST_CASE("words match in any order, as starts of words, singular or plural", "[search]") {
    const FoodTable table = openStarter();
    CHECK(found(table, "oil olive") == found(table, "olive oil"));
    CHECK(holdsNumber(found(table, "oliv"), "04053"));
    CHECK(found(table, "tomatoes").front() == "11529");
    CHECK(found(table, "leeks").front() == "11246");
    CHECK(holdsNumber(found(table, "bay leaves"), "02004"));
    CHECK(holdsNumber(found(table, "cherry"), "09070"));
    CHECK(holdsNumber(found(table, "radish"), "11429"));
    CHECK(holdsNumber(found(table, "anchovy"), "15001"));
    CHECK(holdsNumber(found(table, "strawberry"), "09316"));
    CHECK(holdsNumber(found(table, "EGG Yolk"), "01125"));
}

TEST_CASE("accents and signs in a search do not matter", "[search]") {
    const FoodTable table = openStarter();
    CHECK(holdsNumber(found(table, "gruyere"), "01023"));
    CHECK(holdsNumber(found(table, "Gruyère"), "01023"));
    CHECK(holdsNumber(found(table, "jalapeño"), "11979"));
    CHECK(holdsNumber(found(table, "creme de cassis"), "01001") == false);
    CHECK(holdsNumber(found(table, "goat's milk"), "01106"));
    CHECK(holdsNumber(found(table, "half-and-half"), "01049"));
    CHECK(holdsNumber(found(table, "80% lean beef", 10), "23572"));
    CHECK(holdsNumber(found(table, "\"onion\" AND (raw) *"), "11282") == false);
    CHECK(holdsNumber(found(table, "onion (raw)*"), "11282"));
}

TEST_CASE("no words find no foods, and no more come than asked for", "[search]") {
    const FoodTable table = openStarter();
    CHECK(found(table, "").empty());
    CHECK(found(table, "  ,;* ").empty());
    CHECK(found(table, "xylophone").empty());
    CHECK(found(table, "onion", 0).empty());
    CHECK(found(table, "raw", 5).size() == 5);
    CHECK(found(table, "butter", 3) == std::vector<std::string>{"01145", "01001", "01003"});
}

TEST_CASE("a hit says what it is, its energy and how much of it is known", "[search]") {
    const FoodTable table = openStarter();
    const auto hits = table.search("shrimp raw", 1);
    REQUIRE(hits);
    REQUIRE(hits->size() == 1);
    const FoodHit& shrimp = hits->front();
    CHECK(shrimp.row == TableRow{"usda-sr", "28", "15270"});
    CHECK(shrimp.name == "shrimp, raw");
    CHECK(shrimp.group == "shellfish");
    CHECK(shrimp.energyKcalPer100g == 85);  // SR28, 15270, nutrient 208
    int known = 0;
    for (const auto& value : foodIn(table, "15270").profile.per100g) known += value ? 1 : 0;
    CHECK(shrimp.knownComponents == known);
    CHECK(known < 41);
}
