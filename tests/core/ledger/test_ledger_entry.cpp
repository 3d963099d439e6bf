#include "core/ledger/ledger_entry.h"

#include <catch2/catch.hpp>

#include "json_edit.h"

using namespace nettare;

namespace {

const std::string kHash(64, 'a');

LedgerEntry shownEntry() {
    LedgerEntry entry;
    entry.id = "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2";
    entry.at = "2026-05-16T15:41:07Z";
    entry.recipe = "skewers";
    entry.indication = "prawn-1";
    entry.shown = *Decimal::read("222.0");
    entry.unit = "g";
    entry.readability = *Decimal::read("0.1");
    entry.scale = "pocket scale";
    entry.vessel = "steel bowl";
    entry.pieces = 6;
    return entry;
}

LedgerEntry slip() {
    LedgerEntry entry;
    entry.kind = EntryKind::Superseded;
    entry.id = "00000000-0000-4000-8000-000000000001";
    entry.at = "2026-05-16T15:42:07Z";
    entry.refersTo = shownEntry().id;
    entry.reason = "slip of the hand";
    return entry;
}

std::string textOf(const ChainedEntry& chained) {
    return writeJson(entryJson(chained.entry, chained.sequence, chained.previous));
}

Error refusal(const Json& json) {
    const auto read = readEntry(json);
    REQUIRE_FALSE(read);
    return read.error();
}

}  // namespace

TEST_CASE("an entry of the ledger keeps the digits that the scale showed", "[ledger]") {
    const std::string text = writeJson(entryJson(shownEntry(), 1, ""));
    CHECK(text == R"({"at":"2026-05-16T15:41:07Z","id":"3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2",)"
                  R"("indication":"prawn-1","kind":"shown","origin":"typed","pieces":6,)"
                  R"("readability":"0.1","recipe":"skewers","scale":"pocket scale","sequence":1,)"
                  R"("shown":"222.0","state":"edible portion","unit":"g","vessel":"steel bowl"})");
}

TEST_CASE("an entry reads back to the bytes that were hashed", "[ledger]") {
    LedgerEntry correction = shownEntry();
    correction.refersTo = slip().id;
    correction.reason = "weighed again";
    correction.shown = *Decimal::read("-0.4");
    correction.origin = EntryOrigin::Device;
    correction.state = WeighedState::Residue;
    for (const LedgerEntry& entry : {shownEntry(), slip(), correction})
        for (const long long sequence : {1LL, 2LL, 4'000'000'000LL}) {
            const std::string previous = sequence == 1 ? "" : kHash;
            const Json json = entryJson(entry, sequence, previous);
            const auto read = readEntry(json);
            REQUIRE(read);
            CHECK(textOf(*read) == writeJson(json));
            CHECK(read->sequence == sequence);
            CHECK(read->entry.refersTo == entry.refersTo);
        }
}

TEST_CASE("an entry that only supersedes says which one and why, and no weight", "[ledger]") {
    const Json json = entryJson(slip(), 2, kHash);
    CHECK(json.find("shown") == nullptr);
    CHECK(refusal(without(json, "/reason")).code == ErrorCode::MissingKey);
    CHECK(refusal(without(json, "/refers_to")).code == ErrorCode::MissingKey);
    CHECK(refusal(with(json, "/shown", Json{"1"})).code == ErrorCode::UnknownKey);
}

TEST_CASE("a damaged entry is refused at its place", "[ledger]") {
    const Json good = entryJson(shownEntry(), 2, kHash);
    const struct {
        const char* place;
        Json value;
        ErrorCode code;
    } cases[] = {
        {"/id", Json{"3F2B8C1E-0d4a-4b6f-9e21-7c5d8a90b1f2"}, ErrorCode::NotAUuid},
        {"/id", Json{"prawn-1"}, ErrorCode::NotAUuid},
        {"/previous", Json{std::string(64, 'g')}, ErrorCode::NotAHash},
        {"/previous", Json{"abc"}, ErrorCode::NotAHash},
        {"/at", Json{"yesterday"}, ErrorCode::NotATime},
        {"/unit", Json{"ml"}, ErrorCode::UnitNotOfKind},
        {"/unit", Json{"stone"}, ErrorCode::UnknownUnit},
        {"/pieces", Json{0.0}, ErrorCode::OutOfRange},
        {"/pieces", Json{"1"}, ErrorCode::WrongKind},
        {"/sequence", Json{1.5}, ErrorCode::OutOfRange},
        {"/shown", Json{"1e3"}, ErrorCode::NotADecimal},
        {"/readability", Json{"0"}, ErrorCode::NotPositive},
        {"/kind", Json{"weighed"}, ErrorCode::NotOneOf},
        {"/mood", Json{"good"}, ErrorCode::UnknownKey},
    };
    for (const auto& [place, value, code] : cases) {
        INFO(place);
        const Error error = refusal(with(good, place, value));
        CHECK(error.code == code);
        CHECK(error.pointer == place);
    }
    CHECK(refusal(without(good, "/previous")).code == ErrorCode::MissingKey);
}

TEST_CASE("the first entry of a chain has nothing before it", "[ledger]") {
    const Json first = entryJson(shownEntry(), 1, "");
    CHECK(readEntry(first));
    CHECK(refusal(with(first, "/previous", Json{kHash})).code == ErrorCode::UnknownKey);
}

TEST_CASE("an entry says what was weighed, against which tare and in which series", "[ledger]") {
    LedgerEntry entry = shownEntry();
    entry.what = "prawn meat";
    entry.why = "edible portion per piece";
    entry.row = "usda-sr 28 15149";
    entry.vesselTare = *Decimal::read("212.20");
    entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {"size 16/20", "with head"}, ""};
    const Json json = entryJson(entry, 1, "");
    const auto read = readEntry(json);
    REQUIRE(read);
    CHECK(read->entry.what == "prawn meat");
    CHECK(read->entry.vesselTare->text() == "212.20");
    CHECK(read->entry.series == entry.series);
    CHECK(writeJson(entryJson(read->entry, 1, "")) == writeJson(json));
}

TEST_CASE("conditions of a reading stand in order, each once", "[ledger]") {
    LedgerEntry entry = shownEntry();
    entry.what = "prawn meat";
    entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {"with head", "size 16/20"}, ""};
    const Error error = refusal(entryJson(entry, 1, ""));
    CHECK(error.code == ErrorCode::TagsNotSorted);
    CHECK(error.pointer == "/series/tags");
}

TEST_CASE("scales, their checks and vessels are entries of the ledger", "[ledger]") {
    LedgerEntry scale;
    scale.kind = EntryKind::Scale;
    scale.id = slip().id;
    scale.at = slip().at;
    scale.scale = "counter";
    scale.unit = "g";
    scale.readability = *Decimal::read("0.1");
    scale.capacity = *Decimal::read("3000");
    LedgerEntry check = scale;
    check.kind = EntryKind::Checked;
    check.capacity.reset();
    check.shown = *Decimal::read("200.1");
    check.mass = *Decimal::read("200");
    LedgerEntry bowl = scale;
    bowl.kind = EntryKind::Vessel;
    bowl.capacity.reset();
    bowl.shown = *Decimal::read("212.2");
    bowl.vessel = "steel bowl";
    for (const LedgerEntry& entry : {scale, check, bowl}) {
        const Json json = entryJson(entry, 1, "");
        const auto read = readEntry(json);
        REQUIRE(read);
        CHECK(writeJson(entryJson(read->entry, 1, "")) == writeJson(json));
    }
}
