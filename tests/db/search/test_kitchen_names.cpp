#include "db/search/kitchen_names.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <utility>

#include "core/support/text.h"
#include "db/search/embedded_words.h"
#include "db/search_words.h"

namespace nettare {

namespace {

bool isCalled(const char* food, const char* name) {
    const auto names = kitchenNamesOf(food);
    return std::ranges::find(names, name) != names.end();
}

}  // namespace

TEST_CASE("a food of a table is called what kitchens call it", "[search]") {
    for (const auto& [food, name] :
         {std::pair{"Squash, summer, zucchini, includes skin, raw", "courgette"},
          {"Eggplant, raw", "aubergine"},
          {"Rutabagas, raw", "swede"},
          {"Arugula, raw", "rocket"},
          {"Onions, spring or scallions (includes tops and bulb), raw", "spring onion"},
          {"Coriander (cilantro) leaves, raw", "fresh coriander"},
          {"Beef, ground, 80% lean meat / 20% fat, raw", "beef mince"},
          {"Cream, fluid, heavy whipping", "double cream"},
          {"Wheat flour, white, all-purpose, enriched, bleached", "plain flour"},
          {"Okra, raw", "bhindi"},
          {"Spices, cumin seed", "jeera"},
          {"Crustaceans, shrimp, mixed species, raw", "gambas"},
          {"Cheese, parmesan, hard", "Parmigiano"}}) {
        INFO(food << ": " << name);
        CHECK(isCalled(food, name));
    }
}

TEST_CASE("a dish with the food in it is not called so", "[search]") {
    CHECK_FALSE(isCalled("Babyfood, vegetables, squash, zucchini", "courgette"));
    CHECK_FALSE(isCalled("Soup, onion, with scallion", "spring onion"));
    CHECK_FALSE(isCalled("Beet greens, raw", "beetroot"));
    CHECK(kitchenNamesOf("").empty());
    CHECK(kitchenNamesOf(", ,").empty());
}

TEST_CASE("the list of kitchen names has 300 and more, each line with its words", "[search]") {
    const std::vector<KitchenName> names = readKitchenNames(kitchenNamesText());
    std::size_t lines = 0;
    for (const std::string_view line : split(kitchenNamesText(), '\n'))
        if (!line.starts_with('#') && line.find('|') != std::string_view::npos) ++lines;
    CHECK(names.size() + 1 == lines);  // all but the head of the columns
    std::set<std::string> different;
    for (const KitchenName& name : names) different.insert(name.name);
    CHECK(different.size() >= 300);
    for (const KitchenName& name : names) {
        INFO(name.name);
        for (const auto* words : {&name.head, &name.never})
            for (const std::string& word : *words) CHECK(searchWords(word).size() == 1);
        for (const auto& anyOf : name.others)
            for (const std::string& word : anyOf) CHECK(searchWords(word) == std::vector{word});
    }
}

TEST_CASE("alternatives, exceptions and bad lines of the list are read", "[search]") {
    const auto names =
        readKitchenNames("# a comment\nname|words\nkohl|cabbage/kale raw !red\nx\n|y\nz|\n");
    REQUIRE(names.size() == 1);
    CHECK(names[0].name == "kohl");
    CHECK(names[0].head == std::vector<std::string>{"cabbage", "kale"});
    CHECK(names[0].others == std::vector<KitchenName::AnyOf>{{"raw"}});
    CHECK(names[0].never == std::vector<std::string>{"red"});
}

}  // namespace nettare
