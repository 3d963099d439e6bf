#include "app/kitchen/ledger_entries.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include "core/ledger/counted_series.h"
#include "core/ledger/ledger_reading.h"

using namespace nettare;

namespace {

constexpr const char* kMorning = "2026-05-16T09:00:00+02:00";
const SeriesKey kPrawns{"prawn meat", SeriesKind::PerPiece, "prawn"};

std::string entryId(int number) {
    return fmt::format("00000000-0000-4000-8000-{:012}", number);
}

/// New ids, from 1000 on.
Adding adding() {
    return {"2026-06-01T12:00:00+02:00", [next = 1000]() mutable { return entryId(next++); }};
}

LedgerEntry onCounter(int number, EntryKind kind, Decimal shown) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.id = entry.indication = entryId(number);
    entry.at = kMorning;
    entry.scale = "counter";
    entry.unit = "g";
    entry.readability = Decimal{1, -1};
    entry.shown = shown;
    return entry;
}

/// A kitchen whose bench weighed a bowl empty, then three prawns: over the bowl, over a plate that
/// the scale showed, and taken out of a bag.
Kitchen weighedKitchen() {
    auto kitchen = Kitchen::inMemory(kMorning);
    REQUIRE(kitchen);
    LedgerEntry bowl = onCounter(1, EntryKind::Vessel, Decimal{2122, -1});
    bowl.indication.clear();
    bowl.vessel = "steel bowl";
    const auto prawn = [](int number, Decimal shown) {
        LedgerEntry entry = onCounter(number, EntryKind::Shown, shown);
        entry.what = kPrawns.what;
        entry.series = SeriesMark{kPrawns.kind, kPrawns.of, {}, {}};
        return entry;
    };
    LedgerEntry first = prawn(2, Decimal{2220, -1});
    first.vessel = bowl.vessel;
    first.vesselTare = bowl.shown;
    first.tare = bowl.id;
    const LedgerEntry plate = onCounter(3, EntryKind::Shown, Decimal{1000, -1});
    LedgerEntry second = prawn(4, Decimal{1099, -1});
    second.tare = plate.id;
    const LedgerEntry bag = onCounter(5, EntryKind::Shown, Decimal{5000, -1});
    LedgerEntry third = prawn(6, Decimal{4899, -1});
    third.takenFrom = bag.id;
    for (const LedgerEntry& entry : {bowl, first, plate, second, bag, third})
        REQUIRE(kitchen->record(entry));
    return std::move(*kitchen);
}

/// The document of a recipe that counts by that series, as it was exported.
RecipeDocument exported() {
    RecipeDocument document;
    document.title = "Skewers";
    document.scales = {{"counter-1", "counter", "g", Decimal{1, -1}, {}}};
    document.vessels = {{"bowl-1", "steel bowl", "counter-1", Decimal{2122, -1}}};
    for (const auto& [number, shown] : {std::pair{2, 2220}, std::pair{3, 1000}, std::pair{4, 1099},
                                        std::pair{5, 5000}, std::pair{6, 4899}})
        document.indications.push_back({entryId(number), "counter-1", Decimal{shown, -1},
                                        WeighedState::EdiblePortion, kMorning});
    document.readings = {{"r1", entryId(2), {}, "bowl-1", 1},
                         {"r2", entryId(4), entryId(3), {}, 1},
                         {"r3", entryId(5), entryId(6), {}, 1}};
    SeriesEntry series;
    series.id = "prawns";
    series.name = "prawn meat";
    series.of = "prawn";
    series.readings = {"r1", "r2", "r3"};
    series.bench = BenchEntry{"prawn meat", "", {}};
    document.series = {series};
    return document;
}

CountedSeries seriesOf(const Kitchen& kitchen) {
    const auto entries = kitchen.seriesEntries(kPrawns);
    REQUIRE(entries);
    return countedSeries(readingsOf(*entries, {}), kPrawns, {});
}

std::size_t recorded(Kitchen& kitchen, const RecipeDocument& document) {
    const auto count = recordDocument(kitchen, document, "skewers", adding());
    REQUIRE(count);
    CHECK(kitchen.verify()->faults.empty());
    return *count;
}

}  // namespace

TEST_CASE("what the ledger has already is not recorded again with the document that holds it",
          "[kitchen][bench]") {
    Kitchen kitchen = weighedKitchen();
    REQUIRE(seriesOf(kitchen).pieces.size() == 3);
    const LedgerEnd before = *kitchen.ledgerEnd();
    CHECK(recorded(kitchen, exported()) == 0);
    // The scale gets an entry of its own; nothing that it showed does.
    CHECK(kitchen.ledgerEnd()->sequence <= before.sequence + 1);
    CHECK(seriesOf(kitchen).pieces.size() == 3);
}

TEST_CASE("what was weighed since joins what the ledger has, once", "[kitchen][bench]") {
    Kitchen kitchen = weighedKitchen();
    RecipeDocument document = exported();
    document.indications.push_back({"later", "counter-1", Decimal{1197, -1},
                                    WeighedState::EdiblePortion, "2026-05-20T09:00:00+02:00"});
    document.readings.push_back({"r4", "later", entryId(4), {}, 1});
    document.series.front().readings.emplace_back("r4");
    CHECK(recorded(kitchen, document) == 1);
    const CountedSeries series = seriesOf(kitchen);
    REQUIRE(series.pieces.size() == 4);
    CHECK(series.pieces.back().grams == Approx(9.8));
    CHECK(kitchen.ledger()->back().entry.tare == entryId(4));
}

TEST_CASE("an indication of a known id that shows something else is one of its own",
          "[kitchen][bench]") {
    Kitchen kitchen = weighedKitchen();
    RecipeDocument document = exported();
    document.indications[2].shown = Decimal{1105, -1};
    CHECK(recorded(kitchen, document) == 1);
    const CountedSeries series = seriesOf(kitchen);
    REQUIRE(series.pieces.size() == 4);
    CHECK(series.pieces.back().grams == Approx(10.5));
    // Of a net that the ledger has, another tare makes no second net.
    Kitchen other = weighedKitchen();
    document = exported();
    document.indications[1].shown = Decimal{1001, -1};
    CHECK(recorded(other, document) == 1);
    CHECK(seriesOf(other).pieces.size() == 3);
}

TEST_CASE("a document's vessel is weighed empty on its own scale, in the ledger as well",
          "[kitchen][bench]") {
    auto kitchen = Kitchen::inMemory(kMorning);
    REQUIRE(kitchen);
    RecipeDocument document = exported();
    document.scales.push_back({"floor-1", "floor scale", "g", Decimal{1, 0}, {}});
    document.indications = {
        {"shown-1", "floor-1", Decimal{222, 0}, WeighedState::EdiblePortion, kMorning}};
    document.readings = {{"r1", "shown-1", {}, "bowl-1", 1}};
    document.series.front().readings = {"r1"};
    CHECK(recorded(*kitchen, document) == 1);
    const CountedSeries series = seriesOf(*kitchen);
    REQUIRE(series.pieces.size() == 1);
    CHECK(series.pieces.front().grams == Approx(9.8));
    // By hand: sqrt(1 + 0.01)/sqrt(12), since the bowl stood on the counter's scale of 0.1 g.
    CHECK(series.pieces.front().roundingGrams == Approx(0.29011).epsilon(0.0001));
}
