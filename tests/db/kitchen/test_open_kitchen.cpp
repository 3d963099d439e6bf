#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

ErrorCode codeAt(const std::string& path, KitchenAccess access = KitchenAccess::Write) {
    const auto opened = Kitchen::open(path, access);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().file == path);
    return opened.error().code;
}

}  // namespace

TEST_CASE("a new kitchen is empty, whole, and says what it is", "[kitchen]") {
    const OneKitchen one;
    const Kitchen kitchen = one.open();
    CHECK(kitchen.writable());
    CHECK(kitchen.heldBy().empty());
    CHECK(kitchen.path() == one.path());
    CHECK(kitchen.recipes()->empty());
    CHECK(kitchen.ledger()->empty());
    CHECK(kitchen.verify()->faults.empty());
    CHECK(askSql(one.path(), "PRAGMA application_id") == "1316244329");  // "NtKi"
    CHECK(askSql(one.path(), "PRAGMA user_version") == "6");
    CHECK(askSql(one.path(), "PRAGMA journal_mode") == "wal");
    CHECK(askSql(one.path(), "SELECT length(uuid) FROM kitchen") == "36");
}

TEST_CASE("every table of a kitchen is strict about its types", "[kitchen]") {
    const OneKitchen one;
    CHECK(askSql(one.path(),
                 "SELECT group_concat(name) FROM pragma_table_list WHERE type = 'table' AND NOT "
                 "strict AND schema = 'main' AND name NOT LIKE 'sqlite_%'")
              .empty());
}

TEST_CASE("a closed kitchen is one file", "[kitchen]") {
    const OneKitchen one;
    REQUIRE(one.open().addRecipe(dish("Leek soup"), kNoon));
    for (const char* ending : {"-wal", "-shm", "-journal", ".held"})
        CHECK_FALSE(one.folder().has(std::string{"home.nettare"} + ending));
}

TEST_CASE("a new kitchen never takes the place of a file", "[kitchen]") {
    const Scratch scratch;
    scratch.write("notes.txt", "do not lose me");
    const auto made = Kitchen::create(scratch.path("notes.txt"), kNoon);
    REQUIRE_FALSE(made);
    CHECK(made.error().code == ErrorCode::KitchenExists);
    CHECK(scratch.read("notes.txt") == "do not lose me");
    const auto nowhere = Kitchen::create(scratch.path("no folder/new.nettare"), kNoon);
    REQUIRE_FALSE(nowhere);
    CHECK(nowhere.error().code == ErrorCode::KitchenNotWritable);
}

TEST_CASE("what is no kitchen is refused and stays as it is", "[kitchen]") {
    const Scratch scratch;
    CHECK(codeAt(scratch.path("nothing.nettare")) == ErrorCode::KitchenMissing);
    CHECK(codeAt(scratch.path("")) == ErrorCode::KitchenIsFolder);
    scratch.write("empty.nettare", "");
    CHECK(codeAt(scratch.path("empty.nettare")) == ErrorCode::KitchenEmpty);
    const std::string letter(5000, 'x');
    scratch.write("letter.nettare", letter);
    CHECK(codeAt(scratch.path("letter.nettare")) == ErrorCode::NotAKitchen);
    CHECK(scratch.read("letter.nettare") == letter);
    CHECK(codeAt("/dev/null") == ErrorCode::NotAKitchen);
}

TEST_CASE("a foreign database is refused and not touched", "[kitchen]") {
    const Scratch scratch;
    runSql(scratch.path("other.db"), "PRAGMA application_id = 7; CREATE TABLE t (a)");
    runSql(scratch.path("plain.db"), "CREATE TABLE t (a)");
    for (const char* name : {"other.db", "plain.db"}) {
        const std::string before = scratch.read(name);
        CHECK(codeAt(scratch.path(name)) == ErrorCode::NotAKitchen);
        CHECK(codeAt(scratch.path(name), KitchenAccess::Read) == ErrorCode::NotAKitchen);
        CHECK(scratch.read(name) == before);
        CHECK_FALSE(scratch.has(std::string{name} + ".held"));
    }
}

TEST_CASE("a kitchen of a later program is refused with both formats", "[kitchen]") {
    const OneKitchen one;
    runSql(one.path(), "PRAGMA user_version = 7");
    const std::string before = bytesOf(one.path());
    const auto opened = Kitchen::open(one.path(), KitchenAccess::Write);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == ErrorCode::KitchenNewer);
    CHECK(opened.error().value("found") == "7");
    CHECK(opened.error().value("known") == "6");
    CHECK(bytesOf(one.path()) == before);
}

TEST_CASE("a kitchen whose pages are torn is damaged, or found so by verify", "[kitchen]") {
    OneKitchen one;
    one.leaveUnchecked();
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.addRecipe(dish("Leek soup"), kNoon));
    }
    const std::string whole = bytesOf(one.path());
    one.folder().write("home.nettare", whole.substr(0, whole.size() / 2));
    const auto opened = Kitchen::open(one.path(), KitchenAccess::Write);
    if (opened)
        CHECK_FALSE(opened->verify()->faults.empty());
    else
        CHECK(opened.error().code == ErrorCode::KitchenDamaged);
}

TEST_CASE("a kitchen left while its log was being taken in opens whole", "[kitchen]") {
    const OneKitchen one;
    const Scratch away;
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.addRecipe(dish(std::string(20'000, 'a')), kNoon));
        away.write("home.nettare-wal", one.folder().read("home.nettare-wal"));
        away.write("home.nettare", one.folder().read("home.nettare"));
    }
    // The first page is written and tells the new number of pages (bytes 28 to 31); the others
    // are still in the log.
    std::string bytes = away.read("home.nettare");
    bytes.replace(28, 4, one.folder().read("home.nettare").substr(28, 4));
    away.write("home.nettare", bytes);
    const auto kitchen = Kitchen::open(away.path("home.nettare"), KitchenAccess::Write);
    if (!kitchen) FAIL(said(kitchen.error()));
    CHECK(kitchen->recipes()->size() == 1);
    CHECK(kitchen->verify()->faults.empty());
}

TEST_CASE("a kitchen in memory is a kitchen, and can be kept as a file", "[kitchen]") {
    const Scratch scratch;
    auto sample = Kitchen::inMemory(kNoon);
    REQUIRE(sample);
    CHECK(sample->path().empty());
    CHECK(sample->writable());
    REQUIRE(sample->addRecipe(dish("Leek soup"), kNoon));
    REQUIRE(sample->record(shown(1, "340")));
    CHECK(sample->verify()->faults.empty());
    REQUIRE(sample->backUp(scratch.path("kept.nettare")));
    const auto kept = Kitchen::open(scratch.path("kept.nettare"), KitchenAccess::Write);
    REQUIRE(kept);
    CHECK(kept->writable());
    CHECK(kept->recipes()->size() == 1);
    CHECK(kept->ledger()->size() == 1);
    CHECK(kept->verify()->faults.empty());
}
