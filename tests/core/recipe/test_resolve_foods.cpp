#include <catch2/catch.hpp>

#include "core/recipe/dossier.h"
#include "core/recipe/read_recipe.h"

#include "json_edit.h"
#include "pantry.h"
#include "recipe_documents.h"

using namespace nettare;

namespace {

/// The least recipe with further foods that are kept recipes of these files.
Json recipeUsing(const std::vector<std::string>& files) {
    Json document = smallRecipe();
    for (std::size_t i = 0; i < files.size(); ++i) {
        const std::string id = "kept-" + std::to_string(i);
        Json food = Json::object();
        food.set("id", Json{id}).set("name", Json{id}).set("recipe", Json{files[i]});
        document = with(document, "/foods/-", food);
        Json line = jsonOf(R"({"amount":"1","unit":"g"})");
        line.set("id", Json{id}).set("food", Json{id});
        document = with(document, "/lines/-", line);
    }
    return document;
}

/// "1.json" uses "2.json" and so on, up to the last, which uses none.
Pantry chainOf(int files) {
    Pantry pantry;
    for (int i = 1; i <= files; ++i) {
        const std::vector<std::string> next{std::to_string(i + 1) + ".json"};
        pantry.kept[std::to_string(i) + ".json"] =
            recipeUsing(i < files ? next : std::vector<std::string>{});
    }
    return pantry;
}

}  // namespace

TEST_CASE("a food takes its composition from table, label and statement", "[recipe]") {
    const auto dossier = fullPantry().dossierOf(fullRecipe());
    REQUIRE(dossier);
    REQUIRE(dossier->foods.size() == 3);  // with the salt of the compote
    const Food& quark = dossier->foods[0];
    CHECK(quark.name == "quark");
    CHECK(quark.table->name == "quark, of the test");
    CHECK(quark.label->servingSize->text() == "30");
    CHECK(quark.label->householdAmount->low() == Fraction{2});
    CHECK(quark.label->householdUnit == "tbsp");
    CHECK(quark.label->amounts.size() == 2);
    CHECK(quark.stated.size() == 2);
    CHECK(quark.plant);
    const Food& apple = dossier->foods[1];
    CHECK_FALSE(apple.table);
    CHECK_FALSE(apple.label);
    CHECK(apple.plant);
}

TEST_CASE("added sugars of the document win over those of the table", "[recipe]") {
    const auto given = fullPantry().dossierOf(fullRecipe());
    CHECK(given->foods[0].addedSugarsGiven);
    CHECK(given->foods[0].addedSugars.kind == AddedSugarKind::Stated);
    CHECK(given->foods[0].addedSugars.statedPer100g == 1.5);
    const auto tabled = fullPantry().dossierOf(without(fullRecipe(), "/foods/0/added_sugars"));
    CHECK_FALSE(tabled->foods[0].addedSugarsGiven);
    CHECK(tabled->foods[0].addedSugars.kind == AddedSugarKind::AllOfItsSugars);
    CHECK(tabled->foods[0].addedSugars.reason == "the table says so");
}

TEST_CASE("a food that the table has not is refused by its row", "[recipe]") {
    checkUnresolved(
        {{"/foods/0/table/number", R"("00018")", ErrorCode::FoodNotFound, "/foods/0/table"},
         {"/foods/0/table/release", R"("2")", ErrorCode::FoodNotFound, "/foods/0/table"}});
    CHECK(errorAfter("/foods/0/table/number", R"("00018")").value("found") == "test-table 1 00018");
    CHECK(errorAfter("/foods/0/table/table", R"("other")").code == ErrorCode::NotATable);
}

TEST_CASE("two entries of one food are one food under two names", "[recipe]") {
    Json full = fullRecipe();
    Json again = partAt(full, "/foods/1");
    again.set("id", Json{"windfall"}).set("name", Json{"windfall apple"});
    const Json document =
        with(with(fullRecipe(), "/foods/-", again), "/lines/1/food", Json{"windfall"});
    const auto dossier = fullPantry().dossierOf(document);
    REQUIRE(dossier);
    CHECK(dossier->foods.size() == 3);
    const Recipe& recipe = dossier->main();
    CHECK(std::get<FoodIndex>(recipe.lines[0].what).index == 1);
    CHECK(std::get<FoodIndex>(recipe.lines[1].what).index == 1);
    CHECK(recipe.lines[0].name == "apple");
    CHECK(recipe.lines[1].name == "windfall apple");
}

TEST_CASE("a component is stated and declared once, and false says nothing", "[recipe]") {
    Json document = smallRecipe();
    const Json twice = jsonOf(R"([{"component":"NA","per_100g":"1","reason":"a"},
                                  {"component":"NA","per_100g":"2","reason":"b"}])");
    document = with(document, "/foods/0/stated", twice);
    const auto dossier = Pantry{}.dossierOf(document);
    REQUIRE_FALSE(dossier);
    CHECK(dossier.error().code == ErrorCode::DuplicateId);
    CHECK(dossier.error().pointer == "/foods/0/stated/1");
    const auto identity = [](const Json& json) { return readRecipe(json)->foods[0].identity; };
    const Json small = smallRecipe();
    CHECK(identity(with(small, "/foods/0/plant", Json{false})) == identity(small));
    CHECK(identity(with(small, "/foods/0/plant", Json{true})) != identity(small));
}

TEST_CASE("a food of a recipe and of its kept recipe is one food", "[recipe]") {
    const Pantry pantry{{{"b.json", smallRecipe()}}};
    const auto dossier = pantry.dossierOf(recipeUsing({"b.json"}));
    REQUIRE(dossier);
    CHECK(dossier->foods.size() == 1);
    REQUIRE(dossier->recipes.size() == 2);
    CHECK(dossier->main().file == "main.json");
    CHECK(dossier->recipes[1].file == "b.json");
}

TEST_CASE("a recipe that contains itself is refused with the way back", "[recipe]") {
    const Pantry pantry{
        {{"main.json", recipeUsing({"b.json"})}, {"b.json", recipeUsing({"main.json"})}}};
    const auto round = pantry.dossierOf(recipeUsing({"b.json"}));
    REQUIRE_FALSE(round);
    CHECK(round.error().code == ErrorCode::RecipeCycle);
    CHECK(round.error().value("path") == "main.json → b.json → main.json");
    CHECK(round.error().file == "b.json");
    CHECK(round.error().pointer == "/foods/1/recipe");

    const auto itself = pantry.dossierOf(recipeUsing({"./main.json"}));
    REQUIRE_FALSE(itself);
    CHECK(itself.error().code == ErrorCode::RecipeCycle);
    CHECK(itself.error().value("path") == "main.json → main.json");
    CHECK(itself.error().file == "main.json");
}

TEST_CASE("recipes nest eight deep and not deeper", "[recipe]") {
    const auto eight = chainOf(7).dossierOf(recipeUsing({"1.json"}));
    REQUIRE(eight);
    CHECK(eight->recipes.size() == kRecipeNesting);
    const auto nine = chainOf(8).dossierOf(recipeUsing({"1.json"}));
    REQUIRE_FALSE(nine);
    CHECK(nine.error().code == ErrorCode::NestingTooDeep);
    CHECK(nine.error().file == "7.json");
    CHECK(nine.error().pointer == "/foods/1/recipe");
}

TEST_CASE("a kept recipe used twice is in the dossier once", "[recipe]") {
    const Pantry pantry{{{"b.json", recipeUsing({"d.json"})},
                         {"c.json", recipeUsing({"./d.json"})},
                         {"d.json", smallRecipe()}}};
    const auto dossier = pantry.dossierOf(recipeUsing({"b.json", "c.json", "./b.json"}));
    REQUIRE(dossier);
    REQUIRE(dossier->recipes.size() == 4);
    const auto recipeOf = [&](const Recipe& recipe, std::size_t line) {
        return std::get<RecipeIndex>(recipe.lines.at(line).what).index;
    };
    const Recipe& recipe = dossier->main();
    CHECK(recipeOf(recipe, 1) == recipeOf(recipe, 3));
    CHECK(dossier->recipes[recipeOf(recipe, 1)].file == "b.json");
    CHECK(dossier->recipes[recipeOf(recipe, 2)].file == "c.json");
    CHECK(recipeOf(dossier->recipes[recipeOf(recipe, 1)], 1) ==
          recipeOf(dossier->recipes[recipeOf(recipe, 2)], 1));
}

TEST_CASE("an error of a kept recipe names its own file", "[recipe]") {
    const Pantry pantry{{{"b.json", with(smallRecipe(), "/lines/0/food", Json{"none"})}}};
    const auto wrong = pantry.dossierOf(recipeUsing({"b.json"}));
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().code == ErrorCode::UnknownReference);
    CHECK(wrong.error().file == "b.json");
    CHECK(wrong.error().pointer == "/lines/0/food");

    const auto missing = pantry.dossierOf(recipeUsing({"gone.json"}));
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == ErrorCode::FileNotReadable);
    CHECK(missing.error().file == "gone.json");
}
