#include <catch2/catch.hpp>

#include "core/edit/food_row_edits.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

namespace nettare {

namespace {

OwnFood rye(const std::string& name = "Rye flour, miller's") {
    OwnFood own;
    own.food = rowOf("", 330);
    own.food.row = {"own", "", ""};
    own.food.name = name;
    own.origin.source = "miller's analysis, lot 12";
    own.origin.date = "2026-05-16";
    return own;
}

TableRow saved(Kitchen& kitchen, const OwnFood& own) {
    const auto row = kitchen.saveOwnFood(own, kNoon);
    if (!row) FAIL(said(row.error()));
    return *row;
}

/// The same food with another energy, as its next version.
TableRow savedAgain(Kitchen& kitchen, const TableRow& row, double energyKcal) {
    OwnFood own = rye();
    own.food.row = row;
    own.food.profile.per100g[indexOf(Component::ENERC_KCAL)] = energyKcal;
    return saved(kitchen, own);
}

/// A dish whose one food is that row.
Json dishOf(const TableRow& row) {
    Json document = dish("Rye bread");
    Json table = Json::object();
    table.set("table", Json{row.table}).set("release", Json{row.release});
    table.set("number", Json{row.number});
    (*document.find("foods")->items())[0].set("table", std::move(table));
    return document;
}

std::vector<OwnFoodRecord> foodsOf(const Kitchen& kitchen) {
    auto foods = kitchen.ownFoods();
    REQUIRE(foods);
    return std::move(*foods);
}

OwnFoodEvent eventOf(const TableRow& row, OwnFoodEventKind kind, const std::string& stays = {}) {
    return {row.number, kind, 0, stays, kNoon};
}

}  // namespace

TEST_CASE("an own food is saved with where it comes from, each change as a version of its own",
          "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow first = saved(kitchen, rye());
    CHECK(first.table == "own");
    CHECK(first.release == "1");
    CHECK(first.number.size() == 36);
    const TableRow second = savedAgain(kitchen, first, 341);
    CHECK(second.release == "2");
    CHECK(second.number == first.number);
    const auto foods = kitchen.ownFoods();
    REQUIRE(foods->size() == 1);
    CHECK(foods->front().versions == 2);
    CHECK(foods->front().current.food.row == second);
    CHECK(foods->front().current.origin.source == "miller's analysis, lot 12");
    CHECK(foods->front().current.origin.date == "2026-05-16");
    // What an older recipe rests on is still there.
    CHECK((*kitchen.food(first))->profile[Component::ENERC_KCAL] == 330.0);
    CHECK((*kitchen.food(second))->profile[Component::ENERC_KCAL] == 341.0);
    CHECK(kitchen.ownFoodVersions(first.number)->size() == 2);
}

TEST_CASE("taking a change of an own food back lets the version before count again",
          "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow first = saved(kitchen, rye());
    CHECK(savedAgain(kitchen, first, 341).release == "2");
    OwnFoodEvent back = eventOf(first, OwnFoodEventKind::Counts);
    back.version = 1;
    REQUIRE(kitchen.addOwnFoodEvent(back));
    CHECK(kitchen.ownFoods()->front().current.food.row.release == "1");
    CHECK(kitchen.ownFoods()->front().versions == 2);
    // The next change does not take the number of the one that was taken back.
    CHECK(savedAgain(kitchen, first, 350).release == "3");
    back.version = 9;
    CHECK(kitchen.addOwnFoodEvent(back).error().code == ErrorCode::OwnFoodNotFound);
}

TEST_CASE("an own food goes out of use and comes back, and is never removed", "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow row = saved(kitchen, rye());
    REQUIRE(kitchen.addOwnFoodEvent(eventOf(row, OwnFoodEventKind::Retired)));
    CHECK_FALSE(kitchen.ownFoods()->front().inUse());
    CHECK(*kitchen.food(row));
    REQUIRE(kitchen.addOwnFoodEvent(eventOf(row, OwnFoodEventKind::Returned)));
    CHECK(kitchen.ownFoods()->front().inUse());
}

TEST_CASE("of two own foods that are one, one stands for both until they are parted",
          "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow stays = saved(kitchen, rye());
    const TableRow goes = saved(kitchen, rye("Rye flour"));
    REQUIRE(kitchen.addOwnFoodEvent(eventOf(goes, OwnFoodEventKind::Merged, stays.number)));
    int inUse = 0;
    for (const OwnFoodRecord& record : foodsOf(kitchen)) inUse += record.inUse() ? 1 : 0;
    CHECK(inUse == 1);
    SECTION("neither with itself nor in a circle") {
        const auto round =
            kitchen.addOwnFoodEvent(eventOf(stays, OwnFoodEventKind::Merged, goes.number));
        REQUIRE_FALSE(round);
        CHECK(round.error().code == ErrorCode::OwnFoodIntoItself);
        CHECK(round.error().value("food") == "Rye flour, miller's");
        CHECK(kitchen.addOwnFoodEvent(eventOf(stays, OwnFoodEventKind::Merged, stays.number))
                  .error()
                  .code == ErrorCode::OwnFoodIntoItself);
    }
    SECTION("what was merged is not changed any more") {
        OwnFood changed = rye("Rye flour, fine");
        changed.food.row = goes;
        const auto refused = kitchen.saveOwnFood(changed, kNoon);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == ErrorCode::OwnFoodMergedBefore);
    }
    SECTION("and parted again") {
        REQUIRE(kitchen.addOwnFoodEvent(eventOf(goes, OwnFoodEventKind::Parted)));
        for (const OwnFoodRecord& record : foodsOf(kitchen)) CHECK(record.inUse());
    }
}

TEST_CASE("an own food that nobody saved is not there", "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow nobody{"own", "1", "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2"};
    CHECK_FALSE(*kitchen.food(nobody));
    CHECK(kitchen.ownFoodVersions(nobody.number).error().code == ErrorCode::OwnFoodNotFound);
    CHECK(kitchen.addOwnFoodEvent(eventOf(nobody, OwnFoodEventKind::Retired)).error().code ==
          ErrorCode::OwnFoodNotFound);
    CHECK_FALSE(*kitchen.food({"own", "first", nobody.number}));
}

TEST_CASE("the kitchen knows which recipes use a food, in drafts and in revisions",
          "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow first = saved(kitchen, rye());
    const std::string bread = *kitchen.addRecipe(dishOf(first), kNoon);
    RevisionToKeep revision = toKeep(dishOf(first), "");
    revision.foods = {**kitchen.food(first)};
    REQUIRE(kitchen.keep(bread, revision));
    const TableRow second = savedAgain(kitchen, first, 341);
    CHECK(kitchen.usedRows()->at(first.text()) == 1);
    const auto uses = kitchen.recipesUsing(second);
    REQUIRE(uses->size() == 1);
    CHECK(uses->front().recipe == bread);
    CHECK(uses->front().title == "Rye bread");
    CHECK(uses->front().inDraft);
    CHECK(uses->front().draftRow.release == "1");
    CHECK(uses->front().newestRevision == 1);
    // The draft moves on to the new version; the revision stays with the old one.
    const auto edit = moveOwnFoods(dishOf(first), {first.number}, second, "rye flour");
    REQUIRE(edit);
    REQUIRE(kitchen.journal(bread, added(0, {*edit})));
    CHECK(kitchen.recipesUsing(second)->front().draftRow.release == "2");
    CHECK(kitchen.revision(bread, 1)->foods.front().food.row == first);
    // Undone, the draft uses the first again.
    REQUIRE(kitchen.journal(bread, cursorAt(1, 0)));
    CHECK(kitchen.recipesUsing(second)->front().draftRow.release == "1");
    CHECK(kitchen.recipesUsing({"usda-sr", "28", "20063"})->empty());
}

TEST_CASE("a changed or lost version of an own food is found by a check", "[kitchen][own]") {
    OneKitchen one;
    std::string id;
    {
        Kitchen kitchen = one.open();
        const TableRow row = saved(kitchen, rye());
        CHECK(savedAgain(kitchen, row, 341).release == "2");
        id = row.number;
        const auto check = kitchen.verify();
        CHECK(check->faults.empty());
        CHECK(check->ownVersions == 2);
    }
    runSql(one.path(),
           "DROP TRIGGER own_food_version_is_not_edited; UPDATE own_food_version SET content = "
           "replace(content, '341', '314') WHERE version = 2");
    const auto check = one.open().verify();
    REQUIRE(check->faults.size() == 1);
    CHECK(check->faults.front().code == ErrorCode::OwnFoodChanged);
    CHECK(check->faults.front().value("found") == id);
}

TEST_CASE("a backup holds own foods with all that happened to them", "[kitchen][own]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow stays = saved(kitchen, rye());
    const TableRow goes = saved(kitchen, rye("Rye flour"));
    REQUIRE(kitchen.addOwnFoodEvent(eventOf(goes, OwnFoodEventKind::Merged, stays.number)));
    const std::string copy = one.folder().path("copy.nettare");
    REQUIRE(kitchen.backUp(copy));
    const auto there = Kitchen::open(copy, KitchenAccess::Write);
    REQUIRE(there);
    const auto foods = foodsOf(*there);
    REQUIRE(foods.size() == 2);
    for (const OwnFoodRecord& record : foods)
        CHECK(record.stays.has_value() == (record.id() == goes.number));
    CHECK(there->verify()->faults.empty());
}

}  // namespace nettare
