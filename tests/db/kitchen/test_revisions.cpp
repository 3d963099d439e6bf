#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

TEST_CASE("a revision comes back as it was kept", "[kitchen]") {
    const OneKitchen one;
    std::string id;
    std::string head;
    {
        Kitchen kitchen = one.open();
        id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
        head = kitchen.record(shown(1, "340"))->hash;
        CHECK(*kitchen.keep(id, toKeep(dish("Leek soup"), "first try")) == 1);
    }
    const Kitchen kitchen = one.open(KitchenAccess::Read);
    const auto kept = kitchen.revision(id, 1);
    REQUIRE(kept);
    CHECK(kept->summary.number == 1);
    CHECK_FALSE(kept->summary.parent);
    CHECK(kept->summary.note == "first try");
    CHECK(kept->summary.title == "Leek soup");
    CHECK(kept->summary.at == toKeep({}, "").at);
    CHECK(writeJson(kept->document) == writeJson(dish("Leek soup")));
    CHECK(writeJson(kept->figures) == "{\"energy\":124.5}");
    CHECK(kept->arithmetic == 1);
    CHECK(kept->ledgerHead == head);
    REQUIRE(kept->foods.size() == 2);
    CHECK(kept->foods[1].food.row == rowOf("2", 61).row);
    CHECK(kept->foods[1].food.profile[Component::ENERC_KCAL] == 61);
    CHECK(kept->foods[1].version.size() == 64);
}

TEST_CASE("a revision can be had without what only people read", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
    REQUIRE(kitchen.keep(id, toKeep(dish("Leek soup"), "first try")));
    RevisionToKeep second = toKeep(dish("Leek soup"), "second try");
    second.foods = {rowOf("2", 61), rowOf("1", 40.5)};
    REQUIRE(kitchen.keep(id, second));
    for (const int number : {1, 2, 1}) {
        const auto stored = kitchen.stored(id, number);
        const auto kept = kitchen.revision(id, number);
        REQUIRE(stored);
        CHECK(stored->document == kept->document);
        CHECK(stored->figures == "{\"energy\":124.5}");
        CHECK(stored->arithmetic == 1);
        REQUIRE(stored->foods.size() == 2);
        for (std::size_t i = 0; i < 2; ++i) {
            CHECK(stored->foods[i].version == kept->foods[i].version);
            CHECK(stored->foods[i].food.row == kept->foods[i].food.row);
        }
    }
    CHECK(kitchen.stored(id, 2)->foods[1].food.profile[Component::ENERC_KCAL] == 40.5);
    CHECK(kitchen.stored(id, 3).error().code == ErrorCode::RevisionNotFound);
    CHECK(kitchen.stored("cake", 1).error().code == ErrorCode::RecipeNotFound);
}

TEST_CASE("revisions are numbered for each recipe, and say what they were made from", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string soup = *kitchen.addRecipe(dish("soup"), kNoon);
    const std::string cake = *kitchen.addRecipe(dish("cake"), kNoon);
    CHECK(*kitchen.keep(soup, toKeep(dish("soup"), "")) == 1);
    CHECK(*kitchen.keep(cake, toKeep(dish("cake"), "")) == 1);
    RevisionToKeep second = toKeep(dish("richer soup"), "more cream");
    second.parent = 1;
    CHECK(*kitchen.keep(soup, second) == 2);
    const auto list = kitchen.revisions(soup);
    REQUIRE(list->size() == 2);
    CHECK(list->back().parent == 1);
    CHECK(list->back().title == "richer soup");
    CHECK(list->back().hash != list->front().hash);
    CHECK(kitchen.draft(soup)->baseRevision == 2);
    CHECK(kitchen.draft(cake)->baseRevision == 1);
}

TEST_CASE("keeping leaves the draft and its undo history", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.journal(id, added(0, {retitled("a", "b")})));
    REQUIRE(kitchen.keep(id, toKeep(dish("b"), "")));
    CHECK_FALSE(kitchen.recipes()->front().inWork);
    const auto draft = kitchen.draft(id);
    CHECK(draft->edits.size() == 1);
    CHECK(draft->cursor == 1);
    REQUIRE(kitchen.journal(id, cursorAt(1, 0)));
    CHECK(kitchen.recipes()->front().inWork);
}

TEST_CASE("a revision that is not there is named with how many there are", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.keep(id, toKeep(dish("a"), "")));
    const auto missing = kitchen.revision(id, 7);
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == ErrorCode::RevisionNotFound);
    CHECK(missing.error().value("known") == "1");
    RevisionToKeep orphan = toKeep(dish("a"), "");
    orphan.parent = 2;
    CHECK(kitchen.keep(id, orphan).error().code == ErrorCode::RevisionNotFound);
    CHECK(kitchen.keep("pie", toKeep(dish("a"), "")).error().code == ErrorCode::RecipeNotFound);
    CHECK(kitchen.revisions("pie").error().code == ErrorCode::RecipeNotFound);
    CHECK(kitchen.revision("pie", 1).error().code == ErrorCode::RecipeNotFound);
    CHECK(kitchen.revisions(id)->size() == 1);
}

TEST_CASE("a row of a table is copied in once for each content, and the first one stays",
          "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.copyIn({rowOf("1", 31), rowOf("1", 31)}));
    REQUIRE(kitchen.copyIn({rowOf("1", 32), rowOf("1", 31)}));
    CHECK(kitchen.verify()->foodVersions == 2);
    const auto first = kitchen.food(rowOf("1", 0).row);
    REQUIRE(first);
    REQUIRE(*first);
    CHECK((*first)->profile[Component::ENERC_KCAL] == 31);
    CHECK_FALSE(*kitchen.food({"usda-sr", "28", "9"}));
}

TEST_CASE("revisions share the food versions they pin", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.keep(id, toKeep(dish("a"), "")));
    RevisionToKeep other = toKeep(dish("b"), "a newer table");
    other.foods = {rowOf("2", 61), rowOf("1", 33)};
    REQUIRE(kitchen.keep(id, other));
    CHECK(kitchen.verify()->foodVersions == 3);
    const auto energy = [&](int number, std::size_t food) {
        return *kitchen.revision(id, number)->foods[food].food.profile[Component::ENERC_KCAL];
    };
    CHECK(energy(1, 0) == 31);
    CHECK(energy(2, 0) == 61);
    CHECK(energy(2, 1) == 33);
}
