#include <catch2/catch.hpp>

#include <array>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// A reading of a series of pieces, weighed in the bowl of an earlier entry where there is one.
LedgerEntry ofSeries(int number, const std::string& what, int tare = 0) {
    LedgerEntry entry = shown(number, std::to_string(100 + number));
    entry.what = what;
    entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, ""};
    if (tare > 0) entry.tare = shown(tare, "0").id;
    return entry;
}

LedgerEntry vessel(int number, const std::string& grams) {
    LedgerEntry entry = shown(number, grams);
    entry.kind = EntryKind::Vessel;
    entry.vessel = "steel bowl";
    return entry;
}

/// What a scale showed for a mass of 500 g.
LedgerEntry checked(int number, const std::string& grams) {
    LedgerEntry check = shown(number, grams);
    check.kind = EntryKind::Checked;
    check.mass = Decimal{500, 0};
    return check;
}

/// The sequences of what a kitchen answers, or a failed test.
std::vector<long long> sequencesOf(const Result<std::vector<ChainedEntry>>& answer) {
    if (!answer) FAIL(said(answer.error()));
    std::vector<long long> sequences;
    for (const ChainedEntry& entry : *answer) sequences.push_back(entry.sequence);
    return sequences;
}

ErrorCode refusalOf(Kitchen& kitchen, const LedgerEntry& entry) {
    const auto refused = kitchen.record(entry);
    REQUIRE_FALSE(refused);
    return refused.error().code;
}

constexpr auto kCutSecond =
    "DROP TRIGGER ledger_is_not_shortened; DELETE FROM ledger WHERE sequence = 2; "
    "DELETE FROM ledger_equipment WHERE sequence = 2";

using Sequences = std::vector<long long>;
constexpr SeriesKind kPieces = SeriesKind::PerPiece;

}  // namespace

TEST_CASE("a series holds its readings, their tares and what was said of them",
          "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(ofSeries(2, "Prawn meat", 1)));
    REQUIRE(kitchen.record(shown(3, "340")));
    REQUIRE(kitchen.record(ofSeries(4, "prawn MEAT", 1)));
    REQUIRE(kitchen.record(about(5, EntryKind::LeftOut, 4)));
    REQUIRE(kitchen.record(ofSeries(6, "squid")));
    CHECK(sequencesOf(kitchen.seriesEntries({"PRAWN meat", kPieces, "prawn"})) ==
          Sequences{1, 2, 4, 5});
    CHECK(sequencesOf(kitchen.seriesEntries({"squid", kPieces, "prawn"})) == Sequences{6});
    CHECK(sequencesOf(kitchen.seriesEntries({"squid", SeriesKind::PerMeasure, "prawn"})).empty());
    CHECK(sequencesOf(kitchen.seriesEntries({"lime", kPieces, "prawn"})).empty());
    // What else is called that, and belongs to no series, is not of it.
    LedgerEntry alone = shown(7, "12");
    alone.what = "squid";
    REQUIRE(kitchen.record(alone));
    CHECK(sequencesOf(kitchen.seriesEntries({"squid", kPieces, "prawn"})) == Sequences{6});
}

TEST_CASE("a ratio's series holds what took the place of what went in, with each tare",
          "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const auto over = [](int number, int tare, int instead = 0) {
        LedgerEntry entry = shown(number, std::to_string(100 * number));
        entry.tare = shown(tare, "0").id;
        if (instead > 0) {
            entry.refersTo = shown(instead, "0").id;
            entry.reason = "misread";
        }
        return entry;
    };
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(over(2, 1)));
    REQUIRE(kitchen.record(shown(3, "60")));
    LedgerEntry trimmed = over(4, 3);
    trimmed.what = "fennel";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, shown(2, "0").id};
    REQUIRE(kitchen.record(trimmed));
    REQUIRE(kitchen.record(shown(5, "70")));
    REQUIRE(kitchen.record(over(6, 5, 2)));
    REQUIRE(kitchen.record(shown(7, "80")));
    REQUIRE(kitchen.record(over(8, 7, 6)));
    const SeriesKey key{"fennel", SeriesKind::Ratio, "edible / bought"};
    CHECK(sequencesOf(kitchen.seriesEntries(key)) == Sequences{1, 2, 3, 4, 5, 6, 7, 8});
    const auto readings = readingsOf(*kitchen.seriesEntries(key), {});
    CHECK(readings[3].before == Decimal{800 - 80, 0});
    REQUIRE(kitchen.record(about(9, EntryKind::Superseded, 8)));
    CHECK(sequencesOf(kitchen.seriesEntries(key)).back() == 9);
    CHECK(readingsOf(*kitchen.seriesEntries(key), {})[3].beforeOverruled);
    CHECK(readingsOf(*kitchen.entriesAbout(shown(4, "0").id), {})[3].beforeOverruled);
}

TEST_CASE("a series and a page know of the tares that were taken back", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(ofSeries(2, "lime", 1)));
    REQUIRE(kitchen.record(about(3, EntryKind::Superseded, 1)));
    CHECK(sequencesOf(kitchen.seriesEntries({"lime", kPieces, "prawn"})) == Sequences{1, 2, 3});
    CHECK(sequencesOf(kitchen.ledgerPage(0, 1)) == Sequences{1, 2, 3});
}

TEST_CASE("series are listed by food, with all conditions that occur in them", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    CHECK(kitchen.seriesKept()->empty());
    LedgerEntry large = ofSeries(1, "prawn meat");
    large.series->tags = {"peeled", "size 8/12"};
    LedgerEntry small = ofSeries(2, "Prawn meat");
    small.series->tags = {"peeled", "size 16/20"};
    small.at = "2026-05-17T09:00:00+02:00";
    REQUIRE(kitchen.record(large));
    REQUIRE(kitchen.record(small));
    REQUIRE(kitchen.record(ofSeries(3, "lime")));
    const auto kept = kitchen.seriesKept();
    REQUIRE(kept->size() == 2);
    CHECK((*kept)[0].key == SeriesKey{"lime", kPieces, "prawn"});
    CHECK((*kept)[1].key == SeriesKey{"Prawn meat", kPieces, "prawn"});
    CHECK((*kept)[1].readings == 2);
    CHECK((*kept)[1].lastAt == "2026-05-17T09:00:00+02:00");
    CHECK((*kept)[1].tags == std::vector<std::string>{"peeled", "size 16/20", "size 8/12"});
}

TEST_CASE("a page of the ledger counts indications and brings what belongs to them",
          "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(ofSeries(2, "lime", 1)));
    REQUIRE(kitchen.record(shown(3, "60")));
    REQUIRE(kitchen.record(about(4, EntryKind::Superseded, 2)));
    REQUIRE(kitchen.record(ofSeries(5, "lime", 1)));
    REQUIRE(kitchen.record(ofSeries(6, "lime", 3)));
    CHECK(sequencesOf(kitchen.ledgerPage(0, 1)) == Sequences{3, 6});
    CHECK(sequencesOf(kitchen.ledgerPage(0, 2)) == Sequences{1, 3, 5, 6});
    // Entry 3 is a tare, which the first entry weighed with it tells.
    CHECK(sequencesOf(kitchen.ledgerPage(5, 1)) == Sequences{3, 6});
    CHECK(sequencesOf(kitchen.ledgerPage(3, 1)) == Sequences{1, 2, 4});
    CHECK(sequencesOf(kitchen.ledgerPage(2, 5)) == Sequences{1, 2});
    CHECK(sequencesOf(kitchen.ledgerPage(1, 5)).empty());
    CHECK(sequencesOf(kitchen.ledgerPage(0, 0)).empty());
}

TEST_CASE("scales, checks and empty vessels are found among all readings", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    LedgerEntry scale = shown(2, "0");
    scale.kind = EntryKind::Scale;
    scale.capacity = Decimal{3000, 0};
    const LedgerEntry check = checked(4, "500");
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(scale));
    REQUIRE(kitchen.record(vessel(3, "212")));
    REQUIRE(kitchen.record(check));
    REQUIRE(kitchen.record(shown(5, "50")));
    CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{2, 3, 4});
    REQUIRE(kitchen.record(about(6, EntryKind::Superseded, 4)));
    CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{2, 3, 4, 6});
}

TEST_CASE("scales and their checks are read on from where they were", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const Kitchen other = one.open(KitchenAccess::Read);
    const auto doubted = [](const Kitchen& by) {
        return by.scaleChecks()->isSuspect(shown(1, "50").scale, 1);
    };
    CHECK(sequencesOf(kitchen.equipmentEntries()).empty());
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(checked(2, "490")));
    for (const Kitchen* each : std::array<const Kitchen*, 2>{&kitchen, &other}) {
        CHECK(doubted(*each));
        CHECK(sequencesOf(each->equipmentEntries()) == Sequences{2});
    }
    REQUIRE(kitchen.record(vessel(3, "212")));
    REQUIRE(kitchen.record(about(4, EntryKind::Superseded, 1)));
    REQUIRE(kitchen.record(about(5, EntryKind::Superseded, 2)));
    for (const Kitchen* each : std::array<const Kitchen*, 2>{&kitchen, &other}) {
        CHECK_FALSE(doubted(*each));
        CHECK(sequencesOf(each->equipmentEntries()) == Sequences{2, 3, 5});
        CHECK(sequencesOf(each->equipmentEntries()) == Sequences{2, 3, 5});
    }
}

TEST_CASE("scales and checks that somebody cut off are not remembered", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(checked(2, "490")));
    REQUIRE(kitchen.scaleChecks()->isSuspect(shown(1, "50").scale, 1));
    SECTION("the end alone") {
        runSql(one.path(), kCutSecond);
        CHECK(sequencesOf(kitchen.equipmentEntries()).empty());
    }
    SECTION("and the ledger went on") {
        runSql(one.path(), kCutSecond);
        REQUIRE(kitchen.record(vessel(3, "212")));
        REQUIRE(kitchen.record(vessel(4, "213")));
        CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{2, 3});
    }
    CHECK_FALSE(kitchen.scaleChecks()->isSuspect(shown(1, "50").scale, 1));
}

TEST_CASE("a number of readings that no series has does no harm", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(ofSeries(1, "lime")));
    runSql(one.path(), "UPDATE series SET readings = 9000000000000000000");
    CHECK(sequencesOf(kitchen.seriesEntries({"lime", kPieces, "prawn"})) == Sequences{1});
}

TEST_CASE("a check that was taken back with what belonged to it is forgotten", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE_FALSE(kitchen.together([&]() -> Result<void> {
        REQUIRE(kitchen.record(checked(2, "490")));
        CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{2});
        return fail(ErrorCode::KitchenMissing);
    }));
    CHECK(sequencesOf(kitchen.equipmentEntries()).empty());
    REQUIRE(kitchen.record(vessel(3, "212")));
    CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{2});
    CHECK_FALSE(kitchen.scaleChecks()->isSuspect(shown(1, "50").scale, 1));
}

TEST_CASE("a reading has one successor", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    LedgerEntry second = shown(2, "51");
    second.refersTo = shown(1, "50").id;
    second.reason = "slip of the hand";
    REQUIRE(kitchen.record(second));
    LedgerEntry third = second;
    third.id = shown(3, "52").id;
    CHECK(refusalOf(kitchen, third) == ErrorCode::ReadingOverruled);
}

TEST_CASE("a reading is found by how its id begins", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(0xa1, "50")));
    REQUIRE(kitchen.record(ofSeries(0xa2, "lime", 0xa1)));
    REQUIRE(kitchen.record(shown(0xb0, "70")));
    CHECK(sequencesOf(kitchen.entriesAbout("000000A2")) == Sequences{1, 2});
    CHECK(sequencesOf(kitchen.entriesAbout(shown(0xb0, "0").id)) == Sequences{3});
    for (const char* id :
         {"000000a", "000000c", "", "%", "000000a2-0000-4000-8000-0000000000000"}) {
        INFO(id);
        const auto refused = kitchen.entriesAbout(id);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == ErrorCode::ReadingNotFound);
        CHECK(refused.error().value("found") == id);
    }
}

TEST_CASE("what an entry names must be an indication of the ledger", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    REQUIRE(kitchen.record(about(2, EntryKind::LeftOut, 1)));
    CHECK(refusalOf(kitchen, ofSeries(3, "lime", 9)) == ErrorCode::LedgerEntryNotFound);
    CHECK(refusalOf(kitchen, ofSeries(3, "lime", 2)) == ErrorCode::ReadingNotFound);
    LedgerEntry jar = shown(3, "40");
    jar.takenFrom = shown(9, "0").id;
    CHECK(refusalOf(kitchen, jar) == ErrorCode::LedgerEntryNotFound);
    LedgerEntry ratio = ofSeries(3, "lime");
    ratio.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, shown(9, "0").id};
    CHECK(refusalOf(kitchen, ratio) == ErrorCode::LedgerEntryNotFound);
    CHECK(refusalOf(kitchen, about(3, EntryKind::Superseded, 2)) == ErrorCode::ReadingNotFound);
    CHECK(kitchen.ledger()->size() == 2);
    ratio.series->before = shown(1, "0").id;
    CHECK(kitchen.record(ratio));
}

TEST_CASE("a reading is taken back once, and taken in only where it was left out",
          "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(shown(1, "50")));
    CHECK(refusalOf(kitchen, about(2, EntryKind::TakenIn, 1)) == ErrorCode::ReadingNotLeftOut);
    CHECK(refusalOf(kitchen, about(2, EntryKind::Reasoned, 1)) == ErrorCode::ReadingNotLeftOut);
    REQUIRE(kitchen.record(about(2, EntryKind::LeftOut, 1)));
    REQUIRE(kitchen.record(about(3, EntryKind::Reasoned, 1)));
    REQUIRE(kitchen.record(about(4, EntryKind::TakenIn, 1)));
    CHECK(refusalOf(kitchen, about(5, EntryKind::TakenIn, 1)) == ErrorCode::ReadingNotLeftOut);
    REQUIRE(kitchen.record(about(5, EntryKind::Superseded, 1)));
    for (const EntryKind kind : {EntryKind::Superseded, EntryKind::LeftOut, EntryKind::TakenIn})
        CHECK(refusalOf(kitchen, about(6, kind, 1)) == ErrorCode::ReadingOverruled);
    REQUIRE(kitchen.record(about(6, EntryKind::Reasoned, 1)));
    // The reading that takes its place names it as well.
    LedgerEntry again = shown(7, "51");
    again.refersTo = shown(1, "0").id;
    again.reason = "slip of the hand";
    REQUIRE(kitchen.record(again));
    CHECK(sequencesOf(kitchen.entriesAbout(shown(1, "0").id)) == Sequences{1, 2, 3, 4, 5, 6, 7});
}

TEST_CASE("of a reading of a series it is said once that it is as weighed", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.record(ofSeries(1, "lime")));
    REQUIRE(kitchen.record(about(2, EntryKind::TakenIn, 1)));
    CHECK(refusalOf(kitchen, about(3, EntryKind::TakenIn, 1)) == ErrorCode::ReadingNotLeftOut);
    CHECK(refusalOf(kitchen, about(3, EntryKind::Reasoned, 1)) == ErrorCode::ReadingNotLeftOut);
    REQUIRE(kitchen.record(about(3, EntryKind::LeftOut, 1)));
    REQUIRE(kitchen.record(about(4, EntryKind::TakenIn, 1)));
    REQUIRE(kitchen.record(about(5, EntryKind::TakenIn, 1)));
    CHECK(sequencesOf(kitchen.seriesEntries({"lime", kPieces, "prawn"})) ==
          Sequences{1, 2, 3, 4, 5});
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("the ledger is handed on entry by entry until it is enough", "[kitchen][bench]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    CHECK(kitchen.ledgerEnd()->sequence == 0);
    CHECK(kitchen.ledgerEnd()->hash.empty());
    for (int i = 1; i <= 5; ++i) REQUIRE(kitchen.record(shown(i, "50")));
    std::vector<std::string> hashes;
    REQUIRE(kitchen.readLedger([&](const ChainedEntry& entry) {
        hashes.push_back(entry.hash);
        return entry.sequence < 3;
    }));
    CHECK(hashes.size() == 3);
    CHECK(*kitchen.hasLedgerHash(hashes[1]));
    CHECK_FALSE(*kitchen.hasLedgerHash(std::string(64, 'a')));
    CHECK(kitchen.ledgerEnd()->sequence == 5);
    CHECK(kitchen.ledgerEnd()->hash == kitchen.ledger()->back().hash);
}

TEST_CASE("a kitchen of the format before the bench finds its series and readings",
          "[kitchen][bench][migrations]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        REQUIRE(kitchen.record(vessel(1, "212")));
        REQUIRE(kitchen.record(ofSeries(2, "lime", 1)));
        REQUIRE(kitchen.record(about(3, EntryKind::LeftOut, 2)));
    }
    runSql(one.path(),
           "DROP TRIGGER ledger_end_follows; DROP TABLE ledger_end; DROP TABLE ledger_lost; DROP "
           "TABLE ledger_reference; "
           "DROP TABLE ledger_equipment; DROP TABLE series_entry; DROP TABLE series_tag; "
           "DROP TABLE series; PRAGMA user_version = 5");
    Kitchen kitchen = one.open();
    CHECK(sequencesOf(kitchen.seriesEntries({"Lime", kPieces, "prawn"})) == Sequences{1, 2, 3});
    CHECK(sequencesOf(kitchen.equipmentEntries()) == Sequences{1});
    CHECK(refusalOf(kitchen, about(4, EntryKind::TakenIn, 1)) == ErrorCode::ReadingNotLeftOut);
    REQUIRE(kitchen.record(about(4, EntryKind::TakenIn, 2)));
    CHECK(askSql(one.path(), "SELECT sequence FROM ledger_end") == "4");
    CHECK(kitchen.verify()->faults.empty());
}
