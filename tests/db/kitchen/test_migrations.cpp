#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>

#include "db/kitchen/kitchen_format.h"
#include "db/kitchen/migrations.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

using Steps = std::vector<SqlStep>;

Steps firstSteps(std::size_t count) {
    const auto all = kitchenSchema();
    return {all.begin(), all.begin() + static_cast<std::ptrdiff_t>(count)};
}

/// A kitchen as a program of that format left it: the rows that its tables can hold, and none of
/// the steps after it.
void writeOlder(const std::string& path, std::size_t format) {
    SQLite::Database database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec("PRAGMA journal_mode = WAL");
    REQUIRE(migrate(database, path, firstSteps(format), [&] {
        database.exec("PRAGMA application_id = " + std::to_string(kKitchenApplicationId));
        database.exec(
            "INSERT INTO kitchen VALUES (1, "
            "'00000000-0000-4000-8000-000000000001', '2026-01-01T00:00:00Z')");
    }));
    const OneKitchen rich;
    {
        Kitchen kitchen = rich.open();
        OwnFood own;
        own.food = rowOf("", 330);
        own.food.row = {"own", "", ""};
        own.origin = {"miller's analysis", "2026-05-16", "", {}, "", {}};
        REQUIRE(kitchen.saveOwnFood(own, kNoon));
        REQUIRE(kitchen.record(shown(1, "340")));
        const std::string id = *kitchen.addRecipe(dish("Leek soup"), kNoon);
        REQUIRE(kitchen.journal(id, added(0, {retitled("Leek soup", "Leek broth")})));
        REQUIRE(kitchen.keep(id, toKeep(dish("Leek broth"), "")));
        REQUIRE(kitchen.keepPhoto(kSmallPng, kNoon));
    }
    database.exec("ATTACH '" + rich.path() + "' AS rich");
    database.exec("INSERT INTO ledger SELECT sequence, hash, entry FROM rich.ledger");
    if (format < 2) return;
    database.exec(
        "INSERT INTO recipe SELECT * FROM rich.recipe;"
        "INSERT INTO food_version (position, hash, food) "
        "  SELECT position, hash, food FROM rich.food_version;"
        "INSERT INTO revision_food SELECT * FROM rich.revision_food WHERE 0;"
        "INSERT INTO revision (recipe, number, parent, kept_at, note, document_hash, arithmetic, "
        "  ledger_head, document, figures) SELECT recipe, number, parent, kept_at, note, "
        "  document_hash, arithmetic, ledger_head, document, figures FROM rich.revision;"
        "INSERT INTO draft SELECT * FROM rich.draft;"
        "INSERT INTO draft_base SELECT * FROM rich.draft_base;"
        "INSERT INTO draft_edit SELECT * FROM rich.draft_edit");
    if (format < 4) return;
    database.exec(
        "INSERT INTO own_food_version (position, hash, content) "
        "  SELECT position, hash, content FROM rich.own_food_version;"
        "INSERT INTO own_food_event SELECT * FROM rich.own_food_event;"
        "INSERT INTO draft_food SELECT * FROM rich.draft_food");
    if (format < 5) return;
    database.exec("INSERT INTO label_photo SELECT * FROM rich.label_photo");
}

/// Everything in a file but its search index, which may be made anew.
std::string contentOf(const std::string& path) {
    std::string all = askSql(path, "PRAGMA user_version");
    SQLite::Database database{path, SQLite::OPEN_READWRITE};
    SQLite::Statement tables{database,
                             "SELECT name, sql FROM sqlite_schema WHERE type IN ('table', "
                             "'trigger', 'index') ORDER BY name"};
    while (tables.executeStep()) {
        const std::string name = tables.getColumn(0).getString();
        all += "\n" + name + ": " + tables.getColumn(1).getString();
        if (database
                .execAndGet("SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name "
                            "= '" +
                            name + "'")
                .getInt() == 0)
            continue;
        SQLite::Statement rows{database, "SELECT * FROM \"" + name + "\""};
        while (rows.executeStep())
            for (int i = 0; i < rows.getColumnCount(); ++i)
                all += "|" + rows.getColumn(i).getString();
    }
    return all;
}

Error failing(const std::string& path, const Steps& steps) {
    SQLite::Database database{path, SQLite::OPEN_READWRITE};
    const auto migrated = bringUpToDate(database, path, steps, [] {});
    REQUIRE_FALSE(migrated);
    return migrated.error();
}

}  // namespace

TEST_CASE("a kitchen of every older format is brought up to date with all it holds",
          "[kitchen][migrations]") {
    for (std::size_t format = 1; format < kitchenSchema().size(); ++format) {
        INFO("format " << format);
        const Scratch scratch;
        const std::string path = scratch.path("old.nettare");
        writeOlder(path, format);
        const std::string before = contentOf(path);
        {
            const auto kitchen = Kitchen::open(path, KitchenAccess::Write);
            if (!kitchen) FAIL(said(kitchen.error()));
            CHECK(kitchen->writable());
            CHECK(kitchen->ledger()->size() == 1);
            CHECK(kitchen->verify()->faults.empty());
            if (format >= 2) CHECK(kitchen->find("broth")->size() == 1);
        }
        CHECK(askSql(path, "PRAGMA user_version") == std::to_string(kitchenSchema().size()));
        CHECK(pagesOf(path) == "ok");
        CHECK(contentOf(path + ".before-6") == before);
    }
}

TEST_CASE("each step of the schema follows from the format before it", "[kitchen][migrations]") {
    for (std::size_t format = 1; format < kitchenSchema().size(); ++format) {
        const Scratch scratch;
        const std::string path = scratch.path("old.nettare");
        writeOlder(path, format);
        SQLite::Database database{path, SQLite::OPEN_READWRITE};
        CHECK(bringUpToDate(database, path, firstSteps(format + 1), [] {}));
        CHECK(formatOf(database) == static_cast<int>(format) + 1);
        CHECK(scratch.has("old.nettare.before-" + std::to_string(format + 1)));
        CHECK(pagesOf(path) == "ok");
    }
}

TEST_CASE("a kitchen that is up to date is not copied", "[kitchen][migrations]") {
    const OneKitchen one;
    CHECK(one.open().writable());
    CHECK_FALSE(one.folder().has("home.nettare.before-6"));
}

TEST_CASE("a step that fails leaves format and content, and no copy", "[kitchen][migrations]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.addRecipe(dish("Leek soup"), kNoon));
        REQUIRE(kitchen.record(shown(1, "340")));
    }
    const std::string before = contentOf(one.path());
    Steps steps = firstSteps(6);
    steps.push_back({"007_fine.sql", "CREATE TABLE fine (a INT) STRICT; DROP TABLE draft_edit"});
    SECTION("in its middle") {
        steps.push_back({"008_typo.sql", "CREATE TABLE other (a); INSERT INTO nowhere VALUES (1)"});
        const Error error = failing(one.path(), steps);
        CHECK(error.code == ErrorCode::MigrationFailed);
        CHECK(error.value("found") == "6");
        CHECK(error.value("known") == "8");
        CHECK(error.value("step") == "008_typo.sql");
    }
    SECTION("by ending the transaction") {
        steps.back() = {"007_commit.sql", "CREATE TABLE fine (a INT) STRICT; ROLLBACK"};
        CHECK(failing(one.path(), steps).value("reason") == "the step ended the transaction");
    }
    SECTION("by breaking a reference") {
        steps.back() = {"007_orphan.sql",
                        "PRAGMA defer_foreign_keys = ON; DELETE FROM draft_edit; DELETE FROM "
                        "draft_base; DELETE FROM draft; INSERT INTO draft_edit VALUES ('x', 0, "
                        "'{}')"};
        CHECK(failing(one.path(), steps).code == ErrorCode::MigrationFailed);
    }
    CHECK(contentOf(one.path()) == before);
    CHECK_FALSE(one.folder().has("home.nettare.before-7"));
    CHECK_FALSE(one.folder().has("home.nettare.before-8"));
    CHECK(one.open().recipes()->size() == 1);
}

TEST_CASE("a safety copy that is there stays", "[kitchen][migrations]") {
    const Scratch scratch;
    const std::string path = scratch.path("old.nettare");
    writeOlder(path, 2);
    scratch.write("old.nettare.before-6", "an older copy");
    CHECK(Kitchen::open(path, KitchenAccess::Write));
    CHECK(scratch.read("old.nettare.before-6") == "an older copy");
    CHECK(askSql(path + ".before-6-2", "PRAGMA user_version") == "2");
}

TEST_CASE("an older kitchen that is only read is left as it is, with a word on it",
          "[kitchen][migrations]") {
    const Scratch scratch;
    const std::string path = scratch.path("old.nettare");
    writeOlder(path, 2);
    const auto opened = Kitchen::open(path, KitchenAccess::Read);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == ErrorCode::KitchenOlder);
    CHECK(opened.error().value("found") == "2");
    CHECK(askSql(path, "PRAGMA user_version") == "2");
    CHECK_FALSE(scratch.has("old.nettare.before-6"));
}
