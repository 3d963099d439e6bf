#include <catch2/catch.hpp>
#include <optional>
#include <random>

#include "core/support/sha256.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// The bytes of all entries and hashes, as they lie in the file.
std::string bytesOfLedger(const OneKitchen& one) {
    return askSql(one.path(),
                  "SELECT coalesce(group_concat(line, char(10)), '') FROM (SELECT entry || hash AS "
                  "line FROM ledger ORDER BY sequence)");
}

/// A kitchen that is worked in at random.
class RandomWork {
public:
    explicit RandomWork(const OneKitchen& one) : one_{one} {
        REQUIRE(kitchen_->addRecipe(dish("t0"), kNoon));
    }
    void goOn() {
        switch (random_() % 8) {
            case 0:
            case 1:
                return weigh();
            case 2:
                return takeBack();
            case 3:
                return type();
            case 4:
                return undo();
            case 5:
                return keep();
            case 6:
                REQUIRE(kitchen_->copyIn({rowOf("7", static_cast<double>(random_() % 5))}));
                return;
            default:
                kitchen_.reset();
                kitchen_ = one_.open();
        }
    }
    [[nodiscard]] std::size_t entries() const { return static_cast<std::size_t>(readings_); }

private:
    void weigh() {
        standing_.push_back(++readings_);
        REQUIRE(kitchen_->record(shown(readings_, std::to_string(random_() % 1000))));
    }
    void takeBack() {
        if (standing_.empty()) return;
        const auto chosen = standing_.begin() + static_cast<int>(random_() % standing_.size());
        REQUIRE(kitchen_->record(about(++readings_, EntryKind::Superseded, *chosen)));
        standing_.erase(chosen);
    }
    void type() {
        REQUIRE(kitchen_->journal("t0", added(cursor_, {retitled(title(0), title(1))})));
        ++cursor_;
        edits_ = cursor_;
    }
    void undo() {
        if (cursor_ > 0) --cursor_;
        REQUIRE(kitchen_->journal("t0", cursorAt(edits_, cursor_)));
    }
    void keep() { REQUIRE(kitchen_->keep("t0", toKeep(dish(title(0)), "kept"))); }
    [[nodiscard]] std::string title(std::size_t more) const {
        return "t" + std::to_string(cursor_ + more);
    }

    const OneKitchen& one_;
    std::optional<Kitchen> kitchen_ = one_.open();
    std::mt19937 random_{20260516};
    int readings_ = 0;
    std::vector<int> standing_;  ///< readings that were not taken back
    std::size_t edits_ = 0, cursor_ = 0;
};

}  // namespace

TEST_CASE("whatever is done 500 times, the ledger only grows at its end", "[kitchen]") {
    const OneKitchen one;
    RandomWork work{one};
    std::string before;
    for (int i = 0; i < 500; ++i) {
        work.goOn();
        const std::string after = bytesOfLedger(one);
        if (!after.starts_with(before)) FAIL("operation " << i << " changed what was there");
        before = after;
    }
    const auto check = one.open().verify();
    CHECK(check->faults.empty());
    CHECK(check->ledgerEntries == work.entries());
    CHECK(work.entries() > 100);
}

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
    LedgerEntry correction = about(2, EntryKind::Superseded, 9);
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
