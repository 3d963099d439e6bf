#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// Five entries, one revision with the indication "bowl" of the ledger.
void fillShelf(const OneKitchen& one) {
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
    for (int i = 1; i <= 5; ++i) REQUIRE(kitchen.record(shown(i, std::to_string(100 * i))));
    REQUIRE(kitchen.keep(id, toKeep(dish("soup"), "")));
}

Result<KitchenCheck> verified(const OneKitchen& one) {
    return one.open().verify();
}

/// The one fault there is; anything else fails the test.
Error onlyFault(const OneKitchen& one) {
    const auto check = verified(one);
    REQUIRE(check);
    for (const Error& fault : check->faults) UNSCOPED_INFO(said(fault));
    REQUIRE(check->faults.size() == 1);
    return check->faults.front();
}

/// Changes bytes in the file itself, as a bad disk would.
void flip(const OneKitchen& one, const std::string& text, std::size_t at) {
    std::string bytes = bytesOf(one.path());
    const std::size_t found = bytes.find(text);
    REQUIRE(found != std::string::npos);
    bytes[found + at] = static_cast<char>(bytes[found + at] ^ 1);
    one.folder().write("home.nettare", bytes);
}

}  // namespace

TEST_CASE("a check counts what a kitchen holds", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    const auto check = verified(one);
    CHECK(check->faults.empty());
    CHECK(check->recipes == 1);
    CHECK(check->revisions == 1);
    CHECK(check->ledgerEntries == 5);
    CHECK(check->foodVersions == 2);
    CHECK(check->ledgerHead == one.open().ledger()->back().hash);
}

TEST_CASE("one bit changed in a ledger entry names that entry", "[kitchen][verify]") {
    OneKitchen one;
    one.leaveUnchecked();
    fillShelf(one);
    flip(one, R"("shown":"300")", 9);
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::LedgerBroken);
    CHECK(fault.value("found") == "3");
    CHECK(verified(one)->ledgerEntries == 2);
}

TEST_CASE("every bit of every byte of the ledger is watched", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    const std::string sound = bytesOf(one.path());
    const auto ledger = one.open().ledger();
    const ChainedEntry& third = (*ledger)[2];
    const std::string text = writeJson(entryJson(third.entry, third.sequence, third.previous));
    for (std::size_t at = 0; at < text.size(); at += 7) {
        OneKitchen copy;
        copy.leaveUnchecked();
        copy.folder().write("home.nettare", sound);
        flip(copy, text, at);
        INFO(text.substr(at));
        const auto check = verified(copy);
        REQUIRE(check);
        bool named = false;
        for (const Error& fault : check->faults)
            named = named || (fault.code == ErrorCode::LedgerBroken && fault.value("found") == "3");
        CHECK(named);
    }
}

TEST_CASE("an entry swapped with all its hashes is found at the next one", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    const OneKitchen forged;
    {
        Kitchen kitchen = forged.open();
        REQUIRE(kitchen.record(shown(1, "100")));
        REQUIRE(kitchen.record(shown(2, "999")));
    }
    runSql(one.path(), "DROP TRIGGER ledger_is_not_edited; ATTACH '" + forged.path() +
                           "' AS forged; UPDATE ledger SET (entry, hash) = (SELECT entry, hash "
                           "FROM forged.ledger WHERE sequence = 2) WHERE sequence = 2");
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::LedgerBroken);
    CHECK(fault.value("found") == "3");
}

TEST_CASE("a revision that is not what was kept is named", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    runSql(one.path(),
           "DROP TRIGGER revision_is_not_edited; UPDATE revision SET document = "
           "replace(document, 'cold days', 'hot days')");
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::RevisionChanged);
    CHECK(fault.value("recipe") == "soup");
    CHECK(fault.value("revision") == "1");
}

TEST_CASE("a food version that is not what was copied in is named", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    runSql(one.path(),
           "DROP TRIGGER food_version_is_not_edited; UPDATE food_version SET food = "
           "replace(food, 'Food 1', 'Food 7') WHERE number = '1'");
    CHECK(onlyFault(one).code == ErrorCode::FoodVersionChanged);
}

TEST_CASE("a draft that its journal does not lead to is named", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    runSql(one.path(), "UPDATE draft_base SET document = '{\"title\":\"stew\"}'");
    CHECK(onlyFault(one).code == ErrorCode::DraftDamaged);
}

TEST_CASE("a revision that shows another weight than the ledger is named", "[kitchen][verify]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        const std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
        LedgerEntry bowl = shown(1, "340");
        bowl.recipe = id;
        bowl.indication = "bowl";
        bowl.state = WeighedState::Empty;
        REQUIRE(kitchen.record(bowl));
        REQUIRE(kitchen.keep(id, toKeep(dish("soup"), "")));
        CHECK(kitchen.verify()->faults.empty());
        Json other = dish("soup");
        other.set("indications", *parseJson(R"([{"id":"bowl","scale":"counter","shown":"341",)"
                                            R"("state":"empty"}])"));
        REQUIRE(kitchen.keep(id, toKeep(other, "")));
    }
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::RevisionNotAsWeighed);
    CHECK(fault.value("revision") == "2");
    CHECK(fault.value("indication") == "bowl");
}

TEST_CASE("a reference that leads nowhere is a fault", "[kitchen][verify]") {
    OneKitchen one;
    one.leaveUnchecked();
    fillShelf(one);
    runSql(one.path(), "PRAGMA foreign_keys = OFF; INSERT INTO draft_edit VALUES ('pie', 0, '{}')");
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::PagesDamaged);
    CHECK(fault.value("reason") == "a row of draft_edit refers to none of draft");
}

TEST_CASE("a ledger that lost its end is told by the revision that saw it", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    runSql(one.path(),
           "DROP TRIGGER ledger_is_not_shortened; DELETE FROM ledger WHERE sequence > 4");
    const auto check = verified(one);
    REQUIRE(check->faults.size() == 2);
    CHECK(check->faults[0].code == ErrorCode::LedgerBroken);
    CHECK(check->faults[0].value("found") == "5");
    CHECK(check->faults[1].code == ErrorCode::LedgerShortened);
    CHECK(check->faults[1].value("recipe") == "soup");
    CHECK(check->faults[1].value("revision") == "1");
}

TEST_CASE("a revision that names a later end of the ledger than one kept after it is named",
          "[kitchen][verify]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        const std::string soup = *kitchen.addRecipe(dish("soup"), kNoon);
        const std::string stew = *kitchen.addRecipe(dish("stew"), kNoon);
        REQUIRE(kitchen.keep(stew, toKeep(dish("stew"), "")));
        for (int i = 1; i <= 3; ++i) {
            REQUIRE(kitchen.record(shown(i, std::to_string(100 * i))));
            REQUIRE(kitchen.keep(i == 2 ? stew : soup, toKeep(dish(i == 2 ? "stew" : "soup"), "")));
        }
        CHECK(kitchen.verify()->faults.empty());
    }
    runSql(one.path(),
           "DROP TRIGGER revision_is_not_edited; UPDATE revision SET ledger_head = (SELECT hash "
           "FROM ledger WHERE sequence = 3) WHERE recipe = 'stew' AND number = 2");
    CHECK(verified(one)->faults.empty());
    runSql(one.path(),
           "UPDATE revision SET ledger_head = (SELECT hash FROM ledger WHERE sequence = 3) WHERE "
           "recipe = 'stew' AND number = 1");
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::RevisionChanged);
    CHECK(fault.value("recipe") == "stew");
    CHECK(fault.value("revision") == "1");
}

TEST_CASE("a revision that lost a food it uses is named with the food", "[kitchen][verify]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        Json json = dish("soup");
        json.set("foods", *parseJson(R"([{"id":"f1","name":"leek","table":{"table":"usda-sr",)"
                                     R"("release":"28","number":"2"}}])"));
        const std::string id = *kitchen.addRecipe(json, kNoon);
        REQUIRE(kitchen.keep(id, toKeep(json, "")));
        CHECK(kitchen.verify()->faults.empty());
    }
    SECTION("its pin is gone") {
        runSql(one.path(),
               "DROP TRIGGER revision_food_is_not_removed; DELETE FROM revision_food WHERE "
               "position = 1");
    }
    SECTION("its pin leads to another food") {
        runSql(one.path(),
               "DROP TRIGGER revision_food_is_not_edited; UPDATE revision_food SET version = "
               "(SELECT hash FROM food_version WHERE number = '1')");
    }
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::RevisionFoodsChanged);
    CHECK(fault.value("found") == "leek");
    CHECK(fault.value("revision") == "1");
}

TEST_CASE("a recipe whose draft is gone is named", "[kitchen][verify]") {
    const OneKitchen one;
    fillShelf(one);
    runSql(one.path(), "INSERT INTO recipe VALUES (9, 'pie', '2026-05-16T12:00:00+02:00')");
    const Error fault = onlyFault(one);
    CHECK(fault.code == ErrorCode::DraftDamaged);
    CHECK(fault.value("recipe") == "pie");
}
