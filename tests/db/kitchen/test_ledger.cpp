#include <catch2/catch.hpp>

#include "core/support/sha256.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

TEST_CASE("each ledger entry names the hash of the one before", "[kitchen]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        for (int i = 1; i <= 3; ++i) REQUIRE(kitchen.record(shown(i, std::to_string(100 * i))));
    }
    const auto ledger = one.open().ledger();
    REQUIRE(ledger->size() == 3);
    std::string previous;
    for (std::size_t i = 0; i < 3; ++i) {
        const ChainedEntry& entry = (*ledger)[i];
        CHECK(entry.sequence == static_cast<long long>(i) + 1);
        CHECK(entry.previous == previous);
        CHECK(entry.hash ==
              sha256(writeJson(entryJson(entry.entry, entry.sequence, entry.previous))));
        previous = entry.hash;
    }
    CHECK((*ledger)[1].entry.shown.text() == "200");
}

TEST_CASE("a correction is an entry of its own and names one that is there", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "340")));
    LedgerEntry correction = shown(2, "0");
    correction.kind = EntryKind::Superseded;
    correction.refersTo = shown(9, "0").id;
    correction.reason = "slip of the hand";
    const auto refused = kitchen.record(correction);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::LedgerEntryNotFound);
    correction.refersTo = shown(1, "0").id;
    CHECK(kitchen.record(correction)->sequence == 2);
    CHECK(kitchen.ledger()->back().entry.reason == "slip of the hand");
}

TEST_CASE("an id is used once in a ledger", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "340")));
    const auto again = kitchen.record(shown(1, "341"));
    REQUIRE_FALSE(again);
    CHECK(again.error().code == ErrorCode::LedgerIdUsed);
    CHECK(kitchen.ledger()->size() == 1);
}

TEST_CASE("an entry that could not be read back is not written", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    LedgerEntry entry = shown(1, "340");
    entry.id = "no uuid";
    CHECK(kitchen.record(entry).error().code == ErrorCode::NotAUuid);
    entry = shown(1, "340");
    entry.unit = "cup";
    CHECK(kitchen.record(entry).error().code == ErrorCode::UnitNotOfKind);
    CHECK(kitchen.ledger()->empty());
}
