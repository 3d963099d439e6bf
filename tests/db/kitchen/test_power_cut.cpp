#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>

#include "bench_work.h"
#include "one_kitchen.h"
#include "sample_dishes.h"
#include "volatile_disk.h"

using namespace nettare;

namespace {

constexpr int kReadings = 200;

/// What a kitchen answered for before the power went.
struct Acknowledged {
    bool made = false;
    std::string recipe;
    std::vector<std::string> ledger;  ///< hashes
    std::size_t edits = 0;
    int revisions = 0;
};

std::string title(std::size_t edit) {
    return "soup " + std::to_string(edit);
}

/// One entry of the bench, at times an edit and a revision as well; false once the kitchen refuses.
bool work(Kitchen& kitchen, BenchWork& bench, int reading, Acknowledged& so) {
    const auto entry = kitchen.record(bench.next());
    if (!entry) return false;
    so.ledger.push_back(entry->hash);
    if (reading % 3 == 0) {
        if (!kitchen.journal(so.recipe,
                             added(so.edits, {retitled(title(so.edits), title(so.edits + 1))})))
            return false;
        ++so.edits;
    }
    if (reading % 25 == 0) {
        const auto kept = kitchen.keep(so.recipe, toKeep(dish(title(so.edits)), "kept"));
        if (!kept) return false;
        so.revisions = *kept;
    }
    return true;
}

/// A day of weighing; the window is closed and opened again every fifty readings.
Acknowledged weighAllDay(const std::string& path) {
    Acknowledged so;
    auto kitchen = Kitchen::create(path, kNoon);
    if (!kitchen) return so;
    so.made = true;
    const auto recipe = kitchen->addRecipe(dish(title(0)), kNoon);
    if (!recipe) return so;
    so.recipe = *recipe;
    BenchWork bench{4};
    for (int reading = 1; reading <= kReadings; ++reading) {
        if (!work(*kitchen, bench, reading, so)) return so;
        if (reading % 50 != 0) continue;
        { const Kitchen closed = std::move(*kitchen); }
        kitchen = Kitchen::open(path, KitchenAccess::Write);
        if (!kitchen) return so;
    }
    return so;
}

void checkNothingIsGone(const std::string& path, const Acknowledged& so) {
    const auto kitchen = Kitchen::open(path, KitchenAccess::Write);
    if (!so.made && !kitchen) {
        CHECK(kitchen.error().code == ErrorCode::KitchenMissing);
        return;
    }
    if (!kitchen) FAIL(said(kitchen.error()));
    const auto check = kitchen->verify();
    REQUIRE(check);
    for (const Error& fault : check->faults) FAIL(said(fault));
    const auto ledger = kitchen->ledger();
    REQUIRE(ledger->size() >= so.ledger.size());
    for (std::size_t i = 0; i < so.ledger.size(); ++i)
        if ((*ledger)[i].hash != so.ledger[i]) FAIL("entry " << i + 1 << " is another one");
    if (so.recipe.empty()) return;
    CHECK(kitchen->draft(so.recipe)->edits.size() >= so.edits);
    CHECK(kitchen->revisions(so.recipe)->size() >= static_cast<std::size_t>(so.revisions));
}

/// Runs the day with a cut at one sync; without a seed nothing unsynced survives.
void cutOnce(int sync, std::optional<std::uint32_t> seed) {
    INFO("cut at sync " << sync);
    const Scratch scratch;
    const std::string path = scratch.path("home.nettare");
    Acknowledged so;
    {
        VolatileDisk disk;
        disk.cutAtSync(sync);
        if (seed) disk.tossWith(*seed);
        so = weighAllDay(path);
        REQUIRE(disk.isOff());
    }
    checkNothingIsGone(path, so);
    if (scratch.has("home.nettare")) CHECK(pagesOf(path) == "ok");
}

int syncsOfADay() {
    const Scratch scratch;
    VolatileDisk disk;
    const Acknowledged so = weighAllDay(scratch.path("home.nettare"));
    CHECK(so.ledger.size() == kReadings);
    CHECK(so.revisions == kReadings / 25);
    return disk.syncs();
}

/// The slow stage cuts at every sync, the usual one at every eleventh.
int stride() {
    return std::getenv("NETTARE_EVERY_CUT") != nullptr ? 1 : 11;
}

/// Weighings as the bench records them, each with its tare in one transaction; answers the ids of
/// what was acknowledged.
std::vector<std::string> weighAtBench(const std::string& path, int weighings) {
    std::vector<std::string> acknowledged;
    auto kitchen = Kitchen::open(path, KitchenAccess::Write);
    if (!kitchen) return acknowledged;
    for (int i = 0; i < weighings; ++i) {
        const std::string number = std::to_string(100 + i);
        LedgerEntry tare;
        tare.id = tare.indication = "00000" + number + "-0000-4000-8000-000000000001";
        tare.at = kNoon;
        tare.state = WeighedState::Empty;
        tare.scale = "counter";
        tare.unit = "g";
        tare.readability = Decimal{1, -1};
        LedgerEntry gross = tare;
        gross.id = gross.indication = "00000" + number + "-0000-4000-8000-000000000002";
        gross.state = WeighedState::EdiblePortion;
        gross.shown = Decimal{95 + i, -1};
        gross.what = "prawn meat";
        gross.tare = tare.id;
        gross.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, {}};
        const auto both = kitchen->together([&]() -> Result<void> {
            for (const LedgerEntry& entry : {tare, gross})
                if (const auto recorded = kitchen->record(entry); !recorded)
                    return fail(recorded.error());
            return {};
        });
        if (!both) break;
        acknowledged.push_back(gross.id);
    }
    return acknowledged;
}

/// Runs that with a cut at one write on a copy of a kitchen, and looks at what is left.
void cutAtWrite(const std::string& whole, int write, int weighings, bool toss) {
    INFO("cut at write " << write);
    const Scratch scratch;
    const std::string path = scratch.path("home.nettare");
    std::filesystem::copy_file(whole, path);
    std::vector<std::string> acknowledged;
    {
        VolatileDisk disk;
        disk.cutAtWrite(write);
        if (toss) disk.tossWith(static_cast<std::uint32_t>(20260523 + write));
        acknowledged = weighAtBench(path, weighings);
        REQUIRE(disk.isOff());
    }
    const auto opened = Kitchen::open(path, KitchenAccess::Write);
    if (!opened) FAIL(said(opened.error()));
    const Kitchen& kitchen = *opened;
    const auto check = kitchen.verify();
    REQUIRE(check);
    for (const Error& fault : check->faults) FAIL(said(fault));
    // Of a pair, never one alone; and at most the one that was under way.
    const auto ledger = kitchen.ledger();
    REQUIRE(ledger->size() % 2 == 0);
    REQUIRE(ledger->size() >= 2 * acknowledged.size());
    REQUIRE(ledger->size() <= 2 * acknowledged.size() + 2);
    for (std::size_t i = 0; i < acknowledged.size(); ++i)
        if ((*ledger)[2 * i + 1].entry.id != acknowledged[i]) FAIL("weighing " << i << " is gone");
}

}  // namespace

TEST_CASE("the disk of this test really forgets what was not synced", "[power]") {
    const Scratch scratch;
    const std::string path = scratch.path("plain.db");
    {
        VolatileDisk disk;
        runSql(path, "CREATE TABLE t (a); INSERT INTO t VALUES (1)");
        disk.cutAtSync(disk.syncs() + 1);
        runSql(path, "PRAGMA synchronous = OFF; INSERT INTO t VALUES (2)");
        CHECK_THROWS(runSql(path, "INSERT INTO t VALUES (3)"));
        CHECK(disk.isOff());
    }
    CHECK(askSql(path, "SELECT count(*) FROM t") == "1");
}

TEST_CASE("wherever the power goes, no reading, edit or revision is lost", "[power]") {
    const int all = syncsOfADay();
    CHECK(all > kReadings);
    for (int sync = 1; sync <= all; sync += stride()) cutOnce(sync, std::nullopt);
}

TEST_CASE("nor where the disk kept some of what was not synced", "[power]") {
    const int all = syncsOfADay();
    for (int sync = 2; sync <= all; sync += stride())
        cutOnce(sync, static_cast<std::uint32_t>(20260516 + sync));
}

TEST_CASE("a weighing that was acknowledged outlives a power cut at every write", "[power]") {
    constexpr int kWeighings = 4;
    const OneKitchen one, other;
    int all = 0;
    {
        VolatileDisk disk;
        REQUIRE(weighAtBench(other.path(), kWeighings).size() == kWeighings);
        all = disk.writes();
    }
    REQUIRE(all > 4 * kWeighings);
    for (int write = 1; write <= all; ++write)
        for (const bool toss : {false, true}) cutAtWrite(one.path(), write, kWeighings, toss);
}
