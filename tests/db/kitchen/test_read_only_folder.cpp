#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <filesystem>

#include "one_kitchen.h"
#include "sample_dishes.h"
#include "without_rights.h"

using namespace nettare;

namespace {

std::string fillOne(const OneKitchen& one) {
    Kitchen kitchen = one.open();
    std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
    REQUIRE(kitchen.keep(id, toKeep(dish("soup"), "")));
    return id;
}

}  // namespace

TEST_CASE("a kitchen in a folder that cannot be written opens to read", "[kitchen][read-only]") {
    const OneKitchen one;
    const std::string id = fillOne(one);
    const WithoutRights locked{one.folder().path("")};
    for (const KitchenAccess access : {KitchenAccess::Write, KitchenAccess::Read}) {
        Kitchen kitchen = one.open(access);
        CHECK_FALSE(kitchen.writable());
        CHECK(kitchen.heldBy().empty());
        CHECK(kitchen.recipes()->size() == 1);
        CHECK(kitchen.find("soup")->size() == 1);
        CHECK(kitchen.revision(id, 1)->foods.size() == 2);
        CHECK(kitchen.verify()->faults.empty());
        const auto refused = kitchen.record(shown(1, "340"));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == (access == KitchenAccess::Write
                                           ? ErrorCode::KitchenNotWritable
                                           : ErrorCode::KitchenOpenToRead));
    }
    CHECK_FALSE(one.folder().has("home.nettare-shm"));
}

TEST_CASE("a file that cannot be written opens to read as well", "[kitchen][read-only]") {
    const OneKitchen one;
    fillOne(one);
    REQUIRE(::chmod(one.path().c_str(), 0444) == 0);
    {
        const WithoutRights locked{one.folder().path("")};
        CHECK_FALSE(one.open().writable());
    }
    REQUIRE(::chmod(one.path().c_str(), 0644) == 0);
}

TEST_CASE("no kitchen is made where nothing can be written", "[kitchen][read-only]") {
    const OneKitchen one;
    const WithoutRights locked{one.folder().path("")};
    const auto made = Kitchen::create(one.folder().path("new.nettare"), kNoon);
    REQUIRE_FALSE(made);
    CHECK(made.error().code == ErrorCode::KitchenNotWritable);
    const auto saved = one.open().backUp(one.folder().path("copy.nettare"));
    REQUIRE_FALSE(saved);
    CHECK(saved.error().code == ErrorCode::KitchenNotWritable);
}

TEST_CASE("a kitchen that cannot be read at all says so", "[kitchen][read-only]") {
    const OneKitchen one;
    REQUIRE(::chmod(one.path().c_str(), 0000) == 0);
    {
        const WithoutRights locked{one.folder().path("")};
        const auto opened = Kitchen::open(one.path(), KitchenAccess::Read);
        REQUIRE_FALSE(opened);
        CHECK(opened.error().code == ErrorCode::KitchenUnreadable);
    }
    REQUIRE(::chmod(one.path().c_str(), 0644) == 0);
}

TEST_CASE("an older kitchen in such a folder is left alone, with a word on it",
          "[kitchen][read-only]") {
    const OneKitchen one;
    runSql(one.path(), "DROP TABLE recipe_search; PRAGMA user_version = 2");
    const WithoutRights locked{one.folder().path("")};
    const auto opened = Kitchen::open(one.path(), KitchenAccess::Write);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == ErrorCode::KitchenOlder);
}

TEST_CASE("changes that lie beside a kitchen are never hidden", "[kitchen][read-only]") {
    const OneKitchen one;
    const Scratch away;
    // The files of a kitchen whose window was killed: content in the log, nobody at work.
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.addRecipe(dish("soup"), kNoon));
        for (const char* name : {"home.nettare", "home.nettare-wal"})
            std::filesystem::copy_file(one.folder().path(name), away.path(name));
    }
    {
        const WithoutRights locked{away.path("")};
        for (const KitchenAccess access : {KitchenAccess::Write, KitchenAccess::Read}) {
            const auto opened = Kitchen::open(away.path("home.nettare"), access);
            REQUIRE_FALSE(opened);
            CHECK(opened.error().code == ErrorCode::KitchenUnfinished);
        }
    }
    const auto opened = Kitchen::open(away.path("home.nettare"), KitchenAccess::Write);
    REQUIRE(opened);
    CHECK(opened->recipes()->size() == 1);
}

TEST_CASE("somebody without rights sees what the window at work has written",
          "[kitchen][read-only]") {
    const OneKitchen one;
    Kitchen writer = one.open();
    REQUIRE(writer.addRecipe(dish("soup"), kNoon));
    const WithoutRights locked{one.folder().path("")};
    const auto reader = Kitchen::open(one.path(), KitchenAccess::Read);
    if (!reader) FAIL(said(reader.error()));
    CHECK(reader->recipes()->size() == 1);
}
