#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

std::vector<std::string> titlesOf(const Result<std::vector<ShelvedRecipe>>& recipes) {
    std::vector<std::string> titles;
    for (const ShelvedRecipe& recipe : *recipes) titles.push_back(recipe.title);
    return titles;
}

using Titles = std::vector<std::string>;

}  // namespace

TEST_CASE("a recipe is called after its title, and no two alike", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    CHECK(*kitchen.addRecipe(dish("Charred prawn & fennel"), kNoon) == "charred-prawn-fennel");
    CHECK(*kitchen.addRecipe(dish("Charred prawn, fennel"), kNoon) == "charred-prawn-fennel-2");
    CHECK(*kitchen.addRecipe(dish("CHARRED PRAWN FENNEL"), kNoon) == "charred-prawn-fennel-3");
    CHECK(*kitchen.addRecipe(dish("Crème brûlée"), kNoon) == "creme-brulee");
    CHECK(*kitchen.addRecipe(dish("Борщ"), kNoon) == "recipe");
    const std::string endless = *kitchen.addRecipe(dish(std::string(300, 'a')), kNoon);
    CHECK(endless == "recipe-2");
}

TEST_CASE("the shelf stands by title, whatever the case and accents", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    for (const char* title : {"zucchini fritters", "Écrasée of potatoes", "apple crumble", "Dal"})
        REQUIRE(kitchen.addRecipe(dish(title), kNoon));
    CHECK(titlesOf(kitchen.recipes()) ==
          Titles{"apple crumble", "Dal", "Écrasée of potatoes", "zucchini fritters"});
}

TEST_CASE("a recipe is found by title, foods, note and steps", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.addRecipe(dish("Green soup", "leek, raw"), kNoon));
    REQUIRE(kitchen.addRecipe(dish("Red soup", "tomato, ripe"), kNoon));
    CHECK(titlesOf(kitchen.find("soup")) == Titles{"Green soup", "Red soup"});
    CHECK(titlesOf(kitchen.find("so le")) == Titles{"Green soup"});
    CHECK(titlesOf(kitchen.find("tomatoes")) == Titles{"Red soup"});
    CHECK(titlesOf(kitchen.find("cold red")) == Titles{"Red soup"});
    CHECK(titlesOf(kitchen.find("SIMMER")).size() == 2);
    CHECK(titlesOf(kitchen.find("beetroot")).empty());
    CHECK(titlesOf(kitchen.find("\" OR * -(")).empty());
    CHECK(titlesOf(kitchen.find("")).empty());
}

TEST_CASE("a recipe is named by its id or by how its title begins", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    for (const char* title : {"Leek soup", "Leek soup with cream", "Prawn skewers", "Prawn toast"})
        REQUIRE(kitchen.addRecipe(dish(title), kNoon));
    CHECK(*kitchen.recipeNamed("prawn-toast") == "prawn-toast");
    CHECK(*kitchen.recipeNamed("PRAWN S") == "prawn-skewers");
    CHECK(*kitchen.recipeNamed("leek soup") == "leek-soup");
    CHECK(*kitchen.recipeNamed("leek soup w") == "leek-soup-with-cream");
    const auto several = kitchen.recipeNamed("prawn");
    REQUIRE_FALSE(several);
    CHECK(several.error().code == ErrorCode::RecipeAmbiguous);
    CHECK(several.error().value("known") ==
          "“Prawn skewers” (prawn-skewers), “Prawn toast” (prawn-toast)");
    for (const char* nobody : {"toast", "", "&"}) {
        const auto none = kitchen.recipeNamed(nobody);
        REQUIRE_FALSE(none);
        CHECK(none.error().code == ErrorCode::RecipeNotFound);
    }
}

TEST_CASE("a recipe is in work while its draft differs from the newest revision", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
    const auto only = [&] { return kitchen.recipes()->front(); };
    CHECK(only().inWork);
    CHECK(only().revisions == 0);
    CHECK(only().changedAt == kNoon);
    REQUIRE(kitchen.keep(id, toKeep(dish("Leek soup"), "first")));
    CHECK_FALSE(only().inWork);
    CHECK(only().revisions == 1);
    REQUIRE(kitchen.journal(id, added(0, {retitled("Leek soup", "Leek broth")})));
    CHECK(only().inWork);
    CHECK(only().title == "Leek broth");
    REQUIRE(kitchen.journal(id, cursorAt(1, 0)));
    CHECK_FALSE(only().inWork);
    CHECK(only().title == "Leek soup");
}
