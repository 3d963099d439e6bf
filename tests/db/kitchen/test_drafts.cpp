#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// What the journal of a draft comes to.
std::string documentOf(const StoredDraft& draft) {
    Json document = draft.base;
    for (std::size_t i = 0; i < draft.cursor; ++i) REQUIRE_FALSE(apply(draft.edits[i], document));
    return writeJson(document);
}

std::string titleIn(const Kitchen& kitchen, const std::string& id) {
    return *parseJson(documentOf(*kitchen.draft(id)))->find("title")->text();
}

}  // namespace

TEST_CASE("a draft begins with the document it was added with", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
    const auto draft = kitchen.draft(id);
    REQUIRE(draft);
    CHECK(writeJson(draft->base) == writeJson(dish("Leek soup")));
    CHECK(draft->edits.empty());
    CHECK_FALSE(draft->baseRevision);
    CHECK(draft->changedAt == kNoon);
}

TEST_CASE("edits come back after the kitchen was closed, undone ones too", "[kitchen]") {
    const OneKitchen one;
    std::string id;
    {
        Kitchen kitchen = one.open();
        id = *kitchen.addRecipe(dish("a"), kNoon);
        REQUIRE(kitchen.journal(id, added(0, {retitled("a", "b"), retitled("b", "c")})));
        REQUIRE(kitchen.journal(id, added(2, {retitled("c", "d")})));
        REQUIRE(kitchen.journal(id, cursorAt(3, 1)));
    }
    Kitchen kitchen = one.open();
    const auto draft = kitchen.draft(id);
    REQUIRE(draft->edits.size() == 3);
    CHECK(draft->cursor == 1);
    CHECK(draft->edits[2] == retitled("c", "d"));
    CHECK(titleIn(kitchen, id) == "b");
    CHECK(kitchen.recipes()->front().title == "b");
    REQUIRE(kitchen.journal(id, cursorAt(3, 3)));
    CHECK(titleIn(kitchen, id) == "d");
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("an edit after an undo takes the place of what was undone", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.journal(id, added(0, {retitled("a", "b"), retitled("b", "c")})));
    REQUIRE(kitchen.journal(id, added(1, {retitled("b", "x"), retitled("x", "y")})));
    CHECK(kitchen.draft(id)->edits.size() == 3);
    CHECK(titleIn(kitchen, id) == "y");
    // Merged typing: the last edit grows.
    REQUIRE(kitchen.journal(id, added(2, {retitled("x", "yz")})));
    CHECK(titleIn(kitchen, id) == "yz");
    CHECK(kitchen.recipes()->front().title == "yz");
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("an edit that does not fit the draft changes nothing", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.journal(id, added(0, {retitled("a", "b")})));
    for (const JournalChange& change : {added(1, {retitled("not the title", "c")}),
                                        added(2, {retitled("b", "c")}), cursorAt(1, 2)}) {
        const auto refused = kitchen.journal(id, change);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == ErrorCode::EditDoesNotFit);
        CHECK(titleIn(kitchen, id) == "b");
    }
    REQUIRE(kitchen.journal(id, added(1, {retitled("b", "c")})));
    CHECK(titleIn(kitchen, id) == "c");
}

TEST_CASE("drafts are journalled side by side", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string soup = *kitchen.addRecipe(dish("soup"), kNoon);
    const std::string cake = *kitchen.addRecipe(dish("cake"), kNoon);
    REQUIRE(kitchen.journal(soup, added(0, {retitled("soup", "broth")})));
    REQUIRE(kitchen.journal(cake, added(0, {retitled("cake", "tart")})));
    REQUIRE(kitchen.journal(soup, added(1, {retitled("broth", "stock")})));
    CHECK(titleIn(kitchen, soup) == "stock");
    CHECK(titleIn(kitchen, cake) == "tart");
    const auto nobody = kitchen.journal("pie", cursorAt(0, 0));
    REQUIRE_FALSE(nobody);
    CHECK(nobody.error().code == ErrorCode::RecipeNotFound);
    CHECK(kitchen.draft("pie").error().code == ErrorCode::RecipeNotFound);
}

TEST_CASE("search follows the words of a draft as they are typed", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
    const Edit step{EditKind::ChangeStep,
                    "step 1",
                    {SetMember{"/steps/0/text", Json{"Simmer gently."}, Json{"Blend it."}}}};
    REQUIRE(kitchen.journal(id, added(0, {step})));
    CHECK(kitchen.find("blend")->size() == 1);
    CHECK(kitchen.find("simmer")->empty());
    REQUIRE(kitchen.journal(id, cursorAt(1, 0)));
    CHECK(kitchen.find("simmer")->size() == 1);
}

TEST_CASE("a journal with an edit that does not fit goes on from those before it",
          "[kitchen][drafts]") {
    const OneKitchen one;
    std::string id;
    {
        Kitchen kitchen = one.open();
        id = *kitchen.addRecipe(dish("soup"), kNoon);
        REQUIRE(kitchen.journal(id, added(0, {retitled("soup", "stew"), retitled("stew", "pie")})));
    }
    runSql(one.path(),
           "UPDATE draft_edit SET edit = replace(edit, 'stew', 'tart') WHERE position = 1");
    Kitchen kitchen = one.open();
    CHECK(kitchen.verify()->faults.size() == 1);
    CHECK(kitchen.journal(id, cursorAt(2, 1)).error().code == ErrorCode::KitchenDamaged);
    REQUIRE(kitchen.journal(id, added(1, {retitled("stew", "broth")})));
    CHECK(kitchen.verify()->faults.empty());
    CHECK(kitchen.recipes()->front().title == "broth");
    CHECK(kitchen.draft(id)->edits.size() == 2);
}
