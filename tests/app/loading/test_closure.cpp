#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "app/files/share_folder.h"
#include "app/kitchen/keep_draft.h"
#include "app/loading/closure.h"
#include "app/words/error_sentence.h"
#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"

using namespace nettare;

namespace {

constexpr auto kAt = "2026-05-16T12:00:00+02:00";

FoodTables starterTable() {
    auto table = FoodTables::open(shareFolder() + "/starter.table");
    REQUIRE(table);
    return std::move(*table);
}

Kitchen emptyKitchen() {
    auto kitchen = Kitchen::inMemory(kAt);
    REQUIRE(kitchen);
    return std::move(*kitchen);
}

Json jsonOf(const std::string& text) {
    auto json = parseJson(text);
    REQUIRE(json);
    return std::move(*json);
}

/// The skewers with their fennel taken from a kept recipe.
Json usesKept(const std::string& reference) {
    return jsonOf(
        edited(skewers(),
               {{"/foods/1", R"({"id":"fennel","name":"fennel","recipe":")" + reference + "\"}"},
                {"/lines/1", R"({"id":"fennel","amount":"1","piece":"patty","food":"fennel"})"}}));
}

/// The rows of the skewers.
Closure skewerFoods() {
    auto closure = closureOfDraft(emptyKitchen(), jsonOf(skewers()), starterTable());
    REQUIRE(closure);
    return std::move(*closure);
}

/// Keeps the document as a new recipe; answers its id.
std::string kept(Kitchen& kitchen, const Json& document) {
    const auto closure = closureOfDraft(kitchen, document, starterTable());
    REQUIRE(closure);
    const auto revision = revisionToKeep(document, *closure, "first", kAt, {});
    REQUIRE(revision);
    const auto id = kitchen.addRecipe(document, kAt);
    REQUIRE(id);
    REQUIRE(kitchen.keep(*id, *revision));
    return *id;
}

}  // namespace

TEST_CASE("a draft brings the rows of its foods and the recipes it uses", "[closure]") {
    Kitchen kitchen = emptyKitchen();
    CHECK(kept(kitchen, jsonOf(patties())) == "barley-beetroot-patties");
    const Json document = usesKept("barley-beetroot-patties#1");
    const auto closure = closureOfDraft(kitchen, document, starterTable());
    REQUIRE(closure);
    CHECK(closure->recipes.size() == 1);
    CHECK(closure->food({"usda-sr", "28", "15270"}) != nullptr);  // prawns, of the skewers
    CHECK(closure->food({"usda-sr", "28", "20005"}) != nullptr);  // barley, of the patties
    CHECK(closure->food({"usda-sr", "28", "11957"}) == nullptr);  // fennel, of neither
    CHECK(dossierOf(document, "draft", *closure));
}

TEST_CASE("a kept revision keeps its foods, whatever the table says later", "[closure]") {
    Kitchen kitchen = emptyKitchen();
    const Json document = jsonOf(patties());
    auto closure = closureOfDraft(kitchen, document, starterTable());
    REQUIRE(closure);
    for (TableFood& food : closure->foods)
        if (food.row.number == "20005") food.name = "barley of another day";
    const auto id = kitchen.addRecipe(document, kAt);
    REQUIRE(kitchen.keep(*id, *revisionToKeep(document, *closure, "first", kAt, {})));
    const TableRow barley{"usda-sr", "28", "20005"};
    const auto revision = closureOfRevision(kitchen, *kitchen.revision(*id, 1));
    REQUIRE(revision);
    CHECK(revision->food(barley)->name == "barley of another day");
    // The kitchen goes on with the version that it used first.
    CHECK(closureOfDraft(kitchen, document, starterTable())->food(barley)->name ==
          "barley of another day");
}

TEST_CASE("a revision that is not kept is named at the place that uses it", "[closure]") {
    Kitchen kitchen = emptyKitchen();
    kept(kitchen, jsonOf(patties()));
    for (const std::string& reference :
         std::vector<std::string>{"barley-beetroot-patties#2", "soup#1", "patties.json"}) {
        const std::string what = "“" + reference +
                                 "” is no kept revision of this kitchen; write the recipe's id and "
                                 "the revision's number, like barley-patties#2.";
        const auto closure = closureOfDraft(kitchen, usesKept(reference), starterTable());
        REQUIRE_FALSE(closure);
        CHECK(errorSentence(closure.error()) == "/foods/1/recipe: " + what);
        const auto dossier = dossierOf(usesKept(reference), "draft", skewerFoods());
        REQUIRE_FALSE(dossier);
        CHECK(errorSentence(dossier.error()) ==
              fmt::format("{} (used by draft, /foods/1/recipe): {}", reference, what));
    }
}

TEST_CASE("recipes that use each other are refused, and found without going round for ever",
          "[closure]") {
    // A kitchen cannot keep these; a closure made elsewhere could hold them.
    Closure closure = skewerFoods();
    closure.recipes.emplace("a#1", usesKept("b#1"));
    closure.recipes.emplace("b#1", usesKept("a#1"));
    const auto dossier = dossierOf(usesKept("a#1"), "draft", closure);
    REQUIRE_FALSE(dossier);
    CHECK(errorSentence(dossier.error()) ==
          "b#1, /foods/1/recipe: a recipe cannot be an ingredient of itself: a#1 uses b#1, which "
          "uses "
          "a#1; take one of them out.");
}

TEST_CASE("a half-written draft has a closure, and its errors their place", "[closure]") {
    const Kitchen kitchen = emptyKitchen();
    for (const char* text :
         {"null", "{}", R"({"foods":3})", R"({"foods":[1,{"table":2},{"table":{"table":"x"}}]})"}) {
        const auto closure = closureOfDraft(kitchen, jsonOf(text), starterTable());
        REQUIRE(closure);
        CHECK(closure->foods.empty());
        const auto dossier = dossierOf(jsonOf(text), "draft", *closure);
        REQUIRE_FALSE(dossier);
        CHECK(dossier.error().file == "draft");
    }
}
