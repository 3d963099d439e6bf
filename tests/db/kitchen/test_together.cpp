#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// Adds a dish, weighs for it and keeps it; nothing where all went well.
Result<void> addWhole(Kitchen& kitchen, const std::string& title, int entry) {
    const auto id = kitchen.addRecipe(dish(title), kNoon);
    if (!id) return fail(id.error());
    if (const auto entered = kitchen.record(shown(entry, "340")); !entered)
        return fail(entered.error());
    if (const auto kept = kitchen.keep(*id, toKeep(dish(title), "first")); !kept)
        return fail(kept.error());
    return {};
}

}  // namespace

TEST_CASE("changes of a kitchen that belong together are one change", "[kitchen]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.together([&]() -> Result<void> {
            if (auto done = addWhole(kitchen, "Leek soup", 1); !done) return done;
            CHECK(one.open(KitchenAccess::Read).recipes()->empty());  // not for others to see yet
            return addWhole(kitchen, "Leek pie", 2);
        }));
    }
    const Kitchen kitchen = one.open();
    CHECK(kitchen.recipes()->size() == 2);
    CHECK(kitchen.ledger()->size() == 2);
    CHECK(kitchen.revisions("leek-pie")->size() == 1);
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("where one of several changes fails, none is kept", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(addWhole(kitchen, "Leek soup", 1));
    REQUIRE(kitchen.journal("leek-soup", added(0, {retitled("Leek soup", "Leek broth")})));
    const auto failed = kitchen.together([&]() -> Result<void> {
        CHECK(kitchen.journal("leek-soup", added(1, {retitled("Leek broth", "Leek tea")})));
        if (auto done = addWhole(kitchen, "Leek pie", 2); !done) return done;
        return addWhole(kitchen, "Leek tart", 1);  // an entry of that id is there
    });
    REQUIRE_FALSE(failed);
    CHECK(failed.error().code == ErrorCode::LedgerIdUsed);
    CHECK(kitchen.recipes()->size() == 1);
    CHECK(kitchen.recipes()->front().title == "Leek broth");
    CHECK(kitchen.ledger()->size() == 1);
    // The draft goes on from where it was before.
    REQUIRE(kitchen.journal("leek-soup", added(1, {retitled("Leek broth", "Leek stew")})));
    CHECK(kitchen.recipes()->front().title == "Leek stew");
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("a change that fails among others leaves nothing of its own", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.together([&]() -> Result<void> {
        if (auto done = addWhole(kitchen, "Leek soup", 1); !done) return done;
        RevisionToKeep orphan = toKeep(dish("Leek soup"), "of no parent");
        orphan.parent = 9;
        CHECK_FALSE(kitchen.keep("leek-soup", orphan));
        return kitchen.together([&] { return addWhole(kitchen, "Leek pie", 2); });
    }));
    CHECK(kitchen.recipes()->size() == 2);
    CHECK(kitchen.revisions("leek-soup")->size() == 1);
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("a kitchen that is only read takes no changes together either", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open(KitchenAccess::Read);
    bool ran = false;
    const auto refused = kitchen.together([&]() -> Result<void> {
        ran = true;
        return {};
    });
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::KitchenOpenToRead);
    CHECK_FALSE(ran);
}

TEST_CASE("a copy in memory has all that the file has, and keeps its changes to itself",
          "[kitchen]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        REQUIRE(addWhole(kitchen, "Leek soup", 1));
        REQUIRE(kitchen.journal("leek-soup", added(0, {retitled("Leek soup", "Leek broth")})));
    }
    const std::string before = bytesOf(one.path());
    auto copy = Kitchen::openCopy(one.path());
    REQUIRE(copy);
    CHECK(copy->path().empty());
    CHECK(copy->writable());
    CHECK(copy->recipes()->front().title == "Leek broth");
    CHECK(copy->ledger()->front().hash == one.open().ledger()->front().hash);
    REQUIRE(copy->journal("leek-soup", added(1, {retitled("Leek broth", "Leek tea")})));
    REQUIRE(addWhole(*copy, "Leek pie", 2));
    CHECK(copy->verify()->faults.empty());
    CHECK(copy->verify()->recipes == 2);
    CHECK(bytesOf(one.path()) == before);
    REQUIRE(copy->backUp(one.folder().path("kept.nettare")));
    CHECK(pagesOf(one.folder().path("kept.nettare")) == "ok");
}

TEST_CASE("a kitchen in work elsewhere can be copied, and what is none cannot", "[kitchen]") {
    const OneKitchen one;
    Kitchen held = one.open();
    REQUIRE(held.addRecipe(dish("Leek soup"), kNoon));
    const auto copy = Kitchen::openCopy(one.path());
    REQUIRE(copy);
    CHECK(copy->recipes()->size() == 1);
    const auto none = Kitchen::openCopy(one.folder().path("none.nettare"));
    REQUIRE_FALSE(none);
    CHECK(none.error().code == ErrorCode::KitchenMissing);
}
