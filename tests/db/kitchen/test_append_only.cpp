#include <SQLiteCpp/Exception.h>
#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// What SQLite answers; empty where it obeys.
std::string refusal(const std::string& path, const std::string& sql) {
    try {
        runSql(path, "PRAGMA foreign_keys = ON; PRAGMA recursive_triggers = OFF;" + sql);
        return "";
    } catch (const SQLite::Exception& cause) {
        return cause.what();
    }
}

void fill(const OneKitchen& one) {
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("a"), kNoon);
    REQUIRE(kitchen.record(shown(1, "340")));
    REQUIRE(kitchen.record(shown(2, "341")));
    OwnFood own;
    own.food = rowOf("", 330);
    own.food.row = {"own", "", ""};
    own.origin = {"miller's analysis", "2026-05-16", "", {}, "", {}};
    REQUIRE(kitchen.saveOwnFood(own, kNoon));
    REQUIRE(kitchen.keep(id, toKeep(dish("a"), "")));
    REQUIRE(kitchen.keep(id, toKeep(dish("a"), "again")));
    REQUIRE(kitchen.keepPhoto(kSmallPng, kNoon));
}

}  // namespace

TEST_CASE("nothing recorded, kept or pinned can be edited or removed, even in raw SQL",
          "[kitchen]") {
    const OneKitchen one;
    fill(one);
    const std::vector<std::pair<const char*, const char*>> refusals{
        {"UPDATE ledger SET hash = hash",
         "a ledger entry is never edited; add one that supersedes it"},
        {"DELETE FROM ledger WHERE sequence = 2",
         "a ledger entry is never removed; add one that supersedes it"},
        {"UPDATE revision SET note = 'better'", "a revision is never edited; keep another one"},
        {"DELETE FROM revision WHERE number = 2", "a revision is never removed"},
        {"UPDATE revision_food SET version = version", "the foods of a revision are never edited"},
        {"DELETE FROM revision_food", "the foods of a revision are never removed"},
        {"UPDATE food_version SET food = food",
         "a food version is never edited; another content is another version"},
        {"DELETE FROM food_version", "a food version is never removed; revisions may rest on it"},
        {"UPDATE own_food_version SET content = content",
         "a version of an own food is never edited; add another one"},
        {"DELETE FROM own_food_version",
         "a version of an own food is never removed; recipes may rest on it"},
        {"INSERT INTO own_food_version (hash, content) SELECT hash, content FROM own_food_version",
         "a version of an own food follows the last one"},
        {"UPDATE own_food_event SET at = 'never'",
         "what happened to an own food is never edited; add what takes it back"},
        {"DELETE FROM own_food_event",
         "what happened to an own food is never removed; add what takes it back"},
        {"INSERT INTO own_food_event (food, kind, version, at) SELECT food, 'counts', 2, at FROM "
         "own_food_event",
         "what happens to an own food names versions that are there"},
        {"UPDATE label_photo SET bytes = x'ffd8ff'",
         "a photograph is never edited; other bytes are another photograph"},
        {"DELETE FROM label_photo", "a photograph is never removed; labels may rest on it"},
        {"INSERT INTO label_photo SELECT * FROM label_photo",
         "this photograph is there already and stays as it is"},
    };
    for (const auto& [sql, sentence] : refusals) {
        INFO(sql);
        CHECK(refusal(one.path(), sql) == sentence);
    }
    CHECK(one.open().verify()->faults.empty());
}

TEST_CASE("what stands there cannot be replaced by an insert either", "[kitchen]") {
    const OneKitchen one;
    fill(one);
    CHECK(refusal(one.path(),
                  "INSERT OR REPLACE INTO ledger (sequence, hash, entry) SELECT sequence, hash, "
                  "entry FROM ledger WHERE sequence = 2") ==
          "a ledger entry follows the last one and names its hash");
    CHECK(refusal(one.path(),
                  "INSERT OR REPLACE INTO revision (recipe, number, kept_at, note, document_hash, "
                  "arithmetic, ledger_head, document, figures) SELECT recipe, number, kept_at, "
                  "'x', document_hash, 1, '', document, figures FROM revision WHERE number = 1") ==
          "a revision follows the last one of its recipe");
    CHECK(refusal(one.path(),
                  "INSERT OR REPLACE INTO revision_food SELECT * FROM revision_food LIMIT 1") ==
          "a revision that was kept pins no further foods");
    CHECK(refusal(one.path(),
                  "INSERT OR REPLACE INTO food_version (position, hash, food) SELECT position, "
                  "hash, '{}' FROM food_version LIMIT 1") ==
          "this food version is there already and stays as it is");
    for (
        const char* sql :
        {"INSERT OR REPLACE INTO label_photo SELECT position, hash, media_type, kept_at, x'ffd8ff' "
         "FROM label_photo",
         "INSERT OR REPLACE INTO label_photo SELECT position, replace(hash, 'a', 'b'), media_type, "
         "kept_at, x'ffd8ff' FROM label_photo"})
        CHECK(refusal(one.path(), sql) == "this photograph is there already and stays as it is");
    CHECK(one.open().verify()->faults.empty());
}

TEST_CASE("the ledger takes no entry that does not follow the last", "[kitchen]") {
    const OneKitchen one;
    fill(one);
    const std::string hash(64, 'a');
    for (const std::string& entry :
         {std::string{R"({"sequence":4,"previous":""})"}, std::string{R"({"sequence":3})"},
          R"({"sequence":3,"previous":")" + hash + R"("})"}) {
        INFO(entry);
        CHECK(refusal(one.path(),
                      fmt::format(
                          "INSERT INTO ledger (sequence, hash, entry) VALUES (3, '{}', '{}')", hash,
                          entry)) == "a ledger entry follows the last one and names its hash");
    }
}

TEST_CASE("a list of pinned foods without its revision is not kept", "[kitchen]") {
    const OneKitchen one;
    fill(one);
    CHECK(refusal(one.path(),
                  "INSERT INTO revision_food SELECT 'a', 9, 0, hash FROM food_version "
                  "LIMIT 1") == "FOREIGN KEY constraint failed");
}
