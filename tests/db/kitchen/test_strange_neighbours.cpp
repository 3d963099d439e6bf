#include <SQLiteCpp/Database.h>
#include <sys/stat.h>

#include <array>
#include <catch2/catch.hpp>
#include <filesystem>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

Error refusedAt(const std::string& path, KitchenAccess access) {
    const auto opened = Kitchen::open(path, access);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().file == path);
    return opened.error();
}

constexpr std::array kBoth{KitchenAccess::Read, KitchenAccess::Write};

}  // namespace

TEST_CASE("the log of some other database is never taken in", "[kitchen][neighbours]") {
    const OneKitchen one;
    const Scratch away;
    const std::string before = bytesOf(one.path());
    std::string log;
    {
        SQLite::Database other{away.path("other.db"), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        other.exec("PRAGMA journal_mode = WAL; CREATE TABLE t (a); INSERT INTO t VALUES (1)");
        log = away.read("other.db-wal");
    }
    for (const KitchenAccess access : kBoth) {
        one.folder().write("home.nettare-wal", log);
        const Error refused = refusedAt(one.path(), access);
        CHECK(refused.code == ErrorCode::KitchenNeighbour);
        CHECK(refused.value("found") == "home.nettare-wal");
        CHECK(bytesOf(one.path()) == before);
        CHECK(one.folder().read("home.nettare-wal") == log);
    }
    std::filesystem::remove(one.path() + "-wal");
}

TEST_CASE("pipes, folders and links where SQLite keeps its files are refused at once",
          "[kitchen][neighbours]") {
    const OneKitchen one;
    one.folder().write("notes.txt", "do not lose me");
    const auto place = [&](int kind, const std::string& at) {
        if (kind == 0) REQUIRE(::mkfifo(at.c_str(), 0600) == 0);
        if (kind == 1) std::filesystem::create_directory(at);
        if (kind == 2) std::filesystem::create_symlink("notes.txt", at);
        if (kind == 3) std::filesystem::create_symlink("nowhere", at);
    };
    for (const char* ending : {"-wal", "-shm", "-journal", ".held"})
        for (int kind = 0; kind < 4; ++kind)
            for (const KitchenAccess access : kBoth) {
                const std::string name = std::string{"home.nettare"} + ending;
                place(kind, one.folder().path(name));
                const Error refused = refusedAt(one.path(), access);
                CHECK(refused.code == ErrorCode::KitchenNeighbour);
                CHECK(refused.value("found") == name);
                std::filesystem::remove(one.folder().path(name));
            }
    CHECK(one.folder().read("notes.txt") == "do not lose me");
    CHECK_FALSE(one.folder().has("nowhere"));
    CHECK(one.open().writable());
}

TEST_CASE("no kitchen takes a name that files beside a kitchen have", "[kitchen][neighbours]") {
    const OneKitchen one;
    const Kitchen kitchen = one.open();
    for (const char* ending : {"-wal", "-shm", "-journal", ".held"}) {
        for (const auto& refused : {kitchen.backUp(one.path() + ending),
                                    kitchen.backUp(one.folder().path("new.nettare") + ending)}) {
            REQUIRE_FALSE(refused);
            CHECK(refused.error().code == ErrorCode::KitchenNameTaken);
            CHECK(refused.error().value("found") == ending);
        }
        const auto made = Kitchen::create(one.folder().path("new") + ending, kNoon);
        REQUIRE_FALSE(made);
        CHECK(made.error().code == ErrorCode::KitchenNameTaken);
    }
    CHECK_FALSE(one.folder().has("new.nettare-wal"));
}

TEST_CASE("a database that only says it is a kitchen is refused and not touched",
          "[kitchen][neighbours]") {
    const Scratch scratch;
    const std::string header = "PRAGMA application_id = 1316244329; PRAGMA user_version = 3; ";
    runSql(scratch.path("tables.nettare"), header + "CREATE TABLE recipe (a)");
    runSql(scratch.path("views.nettare"),
           header +
               "CREATE VIEW kitchen AS SELECT 1 AS uuid; CREATE VIEW ledger AS WITH RECURSIVE "
               "c (x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM c) SELECT x FROM c");
    for (const char* name : {"tables.nettare", "views.nettare"})
        for (const KitchenAccess access : kBoth) {
            const std::string before = scratch.read(name);
            CHECK(refusedAt(scratch.path(name), access).code == ErrorCode::NotAKitchen);
            CHECK(scratch.read(name) == before);
            CHECK_FALSE(scratch.has(std::string{name} + ".held"));
        }
}

TEST_CASE("a kitchen without one of its tables is damaged", "[kitchen][neighbours]") {
    OneKitchen one;
    one.leaveUnchecked();
    runSql(one.path(), "DROP TABLE draft_edit");
    const Error refused = refusedAt(one.path(), KitchenAccess::Write);
    CHECK(refused.code == ErrorCode::KitchenDamaged);
    CHECK(refused.value("reason") == "the table draft_edit is missing");
}

TEST_CASE("a new kitchen does not stand beside what one of its name left",
          "[kitchen][neighbours]") {
    const OneKitchen one;
    const Kitchen kitchen = one.open();
    one.folder().write("new.nettare-wal", "the last changes of a kitchen that was removed");
    const std::string path = one.folder().path("new.nettare");
    for (const ErrorCode code :
         {kitchen.backUp(path).error().code, Kitchen::create(path, kNoon).error().code})
        CHECK(code == ErrorCode::KitchenNeighbour);
    CHECK_FALSE(one.folder().has("new.nettare"));
    CHECK(one.folder().read("new.nettare-wal").starts_with("the last"));
}

TEST_CASE("a kitchen that was removed while it is open takes nothing more, but can be copied",
          "[kitchen][neighbours]") {
    OneKitchen one;
    one.leaveUnchecked();
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
    std::filesystem::remove(one.path());
    SECTION("nothing in its place") {}
    SECTION("another file in its place") {
        one.folder().write("home.nettare", "something else");
    }
    const auto entry = kitchen.record(shown(1, "340"));
    REQUIRE_FALSE(entry);
    CHECK(entry.error().code == ErrorCode::KitchenMissing);
    CHECK(kitchen.journal(id, added(0, {retitled("soup", "stew")})).error().code ==
          ErrorCode::KitchenMissing);
    REQUIRE(kitchen.backUp(one.folder().path("copy.nettare")));
    CHECK(
        Kitchen::open(one.folder().path("copy.nettare"), KitchenAccess::Read)->recipes()->size() ==
        1);
}
