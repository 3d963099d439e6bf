#include <catch2/catch.hpp>
#include <filesystem>
#include <functional>

#include "one_kitchen.h"
#include "sample_dishes.h"
#include "volatile_disk.h"

using namespace nettare;

namespace {

/// Calls the change with less and less room until it succeeds; answers how often it did not.
int refusals(const OneKitchen& one, const std::function<Result<void>(Kitchen&)>& change,
             const std::function<void(const Kitchen&)>& asBefore) {
    VolatileDisk disk;
    int refused = 0;
    for (int room = 0; room < 200; ++room) {
        auto kitchen = Kitchen::open(one.path(), KitchenAccess::Write);
        REQUIRE(kitchen);
        disk.fullAfterWrites(room);
        const auto done = change(*kitchen);
        disk.fullAfterWrites(-1);
        if (done) return refused;
        CHECK(done.error().code == ErrorCode::KitchenDiskFull);
        CHECK(done.error().file == one.path());
        asBefore(*kitchen);
        CHECK(kitchen->verify()->faults.empty());
        ++refused;
    }
    return -1;
}

Result<void> answer(bool done, const Error& error) {
    if (done) return {};
    return fail(error);
}

}  // namespace

TEST_CASE("on a full disk a change is refused whole, and works once there is room",
          "[kitchen][full]") {
    const OneKitchen one;
    std::string id;
    {
        Kitchen kitchen = one.open();
        id = *kitchen.addRecipe(dish("soup"), kNoon);
        REQUIRE(kitchen.record(shown(1, "340")));
    }
    CHECK(refusals(
              one,
              [](Kitchen& kitchen) {
                  const auto done = kitchen.record(shown(2, "341"));
                  return answer(done.has_value(), done ? Error{} : done.error());
              },
              [](const Kitchen& kitchen) { CHECK(kitchen.ledger()->size() == 1); }) > 0);
    CHECK(refusals(
              one,
              [&](Kitchen& kitchen) {
                  return kitchen.journal(id, added(0, {retitled("soup", "stew")}));
              },
              [&](const Kitchen& kitchen) {
                  CHECK(kitchen.draft(id)->edits.empty());
                  CHECK(kitchen.find("soup")->size() == 1);
              }) > 0);
    CHECK(refusals(
              one,
              [&](Kitchen& kitchen) {
                  const auto done = kitchen.keep(id, toKeep(dish("stew"), ""));
                  return answer(done.has_value(), done ? Error{} : done.error());
              },
              [&](const Kitchen& kitchen) {
                  CHECK(kitchen.revisions(id)->empty());
                  CHECK(kitchen.verify()->foodVersions == 0);
              }) > 0);
    CHECK(one.open().ledger()->size() == 2);
    CHECK(one.open().revisions(id)->size() == 1);
}

TEST_CASE("changes together are refused together, and the journal goes on from before them",
          "[kitchen][full]") {
    const OneKitchen one;
    VolatileDisk disk;
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
    REQUIRE(kitchen.journal(id, added(0, {retitled("soup", "stew")})));
    int refused = 0;
    for (int room = 0; room < 200; ++room) {
        disk.fullAfterWrites(room);
        const auto done = kitchen.together([&]() -> Result<void> {
            const auto entry = kitchen.record(shown(1, "340"));
            if (!entry) return fail(entry.error());
            return kitchen.journal(id, added(1, {retitled("stew", "broth")}));
        });
        disk.fullAfterWrites(-1);
        if (done) break;
        CHECK(done.error().code == ErrorCode::KitchenDiskFull);
        CHECK(kitchen.ledger()->empty());
        REQUIRE(kitchen.journal(id, cursorAt(1, 1)));
        CHECK(kitchen.draft(id)->edits.size() == 1);
        ++refused;
    }
    CHECK(refused > 0);
    CHECK(kitchen.ledger()->size() == 1);
    CHECK(kitchen.draft(id)->edits.size() == 2);
}

TEST_CASE("a backup for which there is no room leaves nothing behind", "[kitchen][full]") {
    const OneKitchen one;
    const std::string copy = one.folder().path("copy.nettare");
    VolatileDisk disk;
    const Kitchen kitchen = one.open();
    for (int room = 0; room < 20; room += 3) {
        disk.fullAfterWrites(room);
        const auto done = kitchen.backUp(copy);
        REQUIRE_FALSE(done);
        CHECK(done.error().code == ErrorCode::KitchenDiskFull);
        CHECK(done.error().file == copy);
        CHECK(std::distance(std::filesystem::directory_iterator{one.folder().path("")}, {}) <= 4);
        CHECK_FALSE(one.folder().has("copy.nettare"));
    }
    disk.fullAfterWrites(-1);
    REQUIRE(kitchen.backUp(copy));
    CHECK(pagesOf(copy) == "ok");
}

TEST_CASE("a migration for which there is no room leaves the kitchen as it was",
          "[kitchen][full]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.addRecipe(dish("soup"), kNoon));
    }
    runSql(one.path(),
           "DROP TABLE recipe_search; DROP TABLE own_food_version; DROP TABLE own_food_event; "
           "DROP TABLE draft_food; DROP TABLE label_photo; DROP TRIGGER ledger_end_follows; "
           "DROP TABLE ledger_end; DROP TABLE ledger_lost; DROP TABLE ledger_reference; DROP TABLE "
           "ledger_equipment; "
           "DROP TABLE series_entry; DROP TABLE series_tag; DROP TABLE series; PRAGMA user_version "
           "= 2");
    int refused = 0;
    for (int room = 0; room < 400; ++room) {
        VolatileDisk disk;
        disk.fullAfterWrites(room);
        const auto opened = Kitchen::open(one.path(), KitchenAccess::Write);
        if (opened) {
            CHECK(opened->find("soup")->size() == 1);
            break;
        }
        CHECK(opened.error().code == ErrorCode::KitchenDiskFull);
        CHECK_FALSE(one.folder().has("home.nettare.before-6"));
        ++refused;
    }
    CHECK(refused > 0);
    CHECK(askSql(one.path(), "PRAGMA user_version") == "6");
}
