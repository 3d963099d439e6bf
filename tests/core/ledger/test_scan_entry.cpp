#include "core/ledger/scan_entry.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/ledger/ledger_words.h"

using namespace nettare;

namespace {

const std::string kHashBefore(64, 'b');

std::string uuidNumber(int number) {
    std::string id = "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b100";
    id[35] = static_cast<char>('0' + number);
    return id;
}

LedgerEntry entryOf(EntryKind kind) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.id = uuidNumber(1);
    entry.at = "2026-05-16T15:41:07+02:00";
    entry.scale = "pocket scale";
    entry.unit = "g";
    entry.readability = *Decimal::read("0.1");
    entry.shown = *Decimal::read("222.0");
    return entry;
}

LedgerEntry wholeReading() {
    LedgerEntry entry = entryOf(EntryKind::Shown);
    entry.recipe = "skewers";
    entry.indication = "prawn-1";
    entry.vessel = "Schüssel, groß";
    entry.pieces = 6;
    entry.refersTo = uuidNumber(2);
    entry.reason = "weighed again";
    entry.what = "prawn meat";
    entry.why = "edible portion per piece, for “Skewers”";
    entry.row = "usda-sr 28 15149";
    entry.tare = uuidNumber(3);
    entry.takenFrom = uuidNumber(4);
    entry.vesselTare = *Decimal::read("12.50");
    entry.series =
        SeriesMark{SeriesKind::Ratio, "edible / bought", {"peeled", "size 16/20"}, uuidNumber(5)};
    return entry;
}

std::vector<LedgerEntry> allKinds() {
    std::vector<LedgerEntry> entries;
    entries.reserve(kEntryKindWords.size() + 3);
    for (const Word<EntryKind>& word : kEntryKindWords) entries.push_back(entryOf(word.meaning));
    for (LedgerEntry& entry : entries) {
        entry.indication = "prawn-2";
        entry.vessel = "steel bowl";
        entry.mass = *Decimal::read("500");
        if (entry.kind == EntryKind::Superseded || entry.kind == EntryKind::LeftOut ||
            entry.kind == EntryKind::TakenIn || entry.kind == EntryKind::Reasoned) {
            entry.refersTo = uuidNumber(2);
            entry.reason = "a shell was in it";
        }
    }
    entries.push_back(wholeReading());
    LedgerEntry scale = entryOf(EntryKind::Scale);
    scale.capacity = *Decimal::read("3000");
    scale.origin = EntryOrigin::Device;
    entries.push_back(scale);
    LedgerEntry pieces = entryOf(EntryKind::Shown);
    pieces.indication = "i1";
    pieces.shown = *Decimal::read("-0.4");
    pieces.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, ""};
    pieces.origin = EntryOrigin::Document;
    pieces.unit = "oz";
    entries.push_back(pieces);
    return entries;
}

std::string canonical(const ChainedEntry& chained) {
    return writeJson(entryJson(chained.entry, chained.sequence, chained.previous));
}

/// Whether parseJson() and readEntry() take the text, and write it again as it is.
bool isCanonical(const std::string& text) {
    const auto json = parseJson(text);
    if (!json) return false;
    const auto entry = readEntry(*json);
    return entry && canonical(*entry) == text;
}

/// The text with one to three bytes changed, taken out, put in or moved.
std::string damagedText(std::string text, std::mt19937& random) {
    for (unsigned i = 0; i <= random() % 3 && !text.empty(); ++i) {
        const std::size_t at = random() % text.size();
        const std::size_t from = random() % text.size();
        switch (random() % 4) {
            case 0:
                text[at] = static_cast<char>(text[at] ^ static_cast<int>(1U << (random() % 8)));
                break;
            case 1:
                text.erase(at, 1 + random() % 3);
                break;
            case 2:
                text.insert(at, text.substr(from, 1 + random() % 12));
                break;
            default:
                text[at] = text[from];
        }
    }
    return text;
}

}  // namespace

TEST_CASE("an entry of every kind is scanned as it is read", "[ledger]") {
    for (const LedgerEntry& entry : allKinds())
        for (const long long sequence : {1LL, 2LL, 100'000LL, 4'000'000'001LL}) {
            const std::string text =
                writeJson(entryJson(entry, sequence, sequence == 1 ? "" : kHashBefore));
            INFO(text);
            REQUIRE(isCanonical(text));
            const auto scanned = scanEntry(text);
            REQUIRE(scanned);
            CHECK(canonical(*scanned) == text);
            CHECK(scanned->sequence == sequence);
            const auto read = readEntry(*parseJson(text));
            CHECK(scanned->previous == read->previous);
            CHECK(scanned->entry.series == read->entry.series);
            CHECK(scanned->entry.pieces == read->entry.pieces);
            CHECK(scanned->entry.shown.text() == read->entry.shown.text());
        }
}

TEST_CASE("what the scan takes is what the reader takes, whatever was damaged", "[ledger]") {
    std::mt19937 random{20260516};
    int taken = 0, refused = 0;
    for (int round = 0; round < 3000; ++round)
        for (const LedgerEntry& entry : allKinds()) {
            const std::string text =
                damagedText(writeJson(entryJson(entry, 100'000, kHashBefore)), random);
            const auto scanned = scanEntry(text);
            ++(scanned ? taken : refused);
            if (!scanned) continue;
            if (!isCanonical(text) || canonical(*scanned) != text) FAIL(text);
        }
    CHECK(taken > 1000);
    CHECK(refused > 1000);
}

TEST_CASE("an entry with a member too few or too many is not scanned", "[ledger]") {
    int members = 0;
    for (const LedgerEntry& entry : allKinds()) {
        const Json sound = entryJson(entry, 2, kHashBefore);
        for (const JsonMember& member : *sound.members()) {
            Json less = sound;
            less.remove(member.key);
            const std::string text = writeJson(less);
            INFO(text);
            CHECK(scanEntry(text).has_value() == isCanonical(text));
        }
        const Json whole = entryJson(wholeReading(), 2, kHashBefore);
        for (const JsonMember& member : *whole.members()) {
            Json more = sound;
            more.set(member.key, member.value);
            const std::string text = writeJson(more);
            INFO(text);
            CHECK(scanEntry(text).has_value() == isCanonical(text));
            ++members;
        }
    }
    CHECK(members > 100);
}

TEST_CASE("a text with a quote in it is left to the reader", "[ledger]") {
    LedgerEntry entry = wholeReading();
    entry.what = "the \"good\" prawns";
    const std::string text = writeJson(entryJson(entry, 2, kHashBefore));
    CHECK(isCanonical(text));
    CHECK_FALSE(scanEntry(text));
}
