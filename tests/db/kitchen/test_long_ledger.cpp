#include <algorithm>
#include <catch2/catch.hpp>
#include <charconv>
#include <cstdlib>
#include <map>
#include <set>
#include <string_view>

#include "bench_work.h"
#include "one_kitchen.h"

using namespace nettare;

namespace {

constexpr int kFoodsWeighed = 40;
constexpr int kOnAPage = 200;

/// 20,000, or what the slow stage asks for.
int entriesAsked() {
    const char* asked = std::getenv("NETTARE_LONG_LEDGER");
    const std::string_view text = asked != nullptr ? asked : "20000";
    int entries = 0;
    std::from_chars(text.data(), text.data() + text.size(), entries);
    return entries;
}

void fillLedger(Kitchen& kitchen, BenchWork& work, int entries) {
    constexpr int kTogether = 20'000;
    while (work.entries() < entries) {
        const int until = std::min(entries, work.entries() + kTogether);
        const auto done = kitchen.together([&]() -> Result<void> {
            while (work.entries() < until)
                if (const auto entry = kitchen.record(work.next()); !entry)
                    return fail(entry.error());
            return {};
        });
        if (!done) FAIL(said(done.error()));
    }
}

bool isIndicationEntry(const LedgerEntry& entry) {
    return entry.kind == EntryKind::Shown || entry.kind == EntryKind::Checked ||
           entry.kind == EntryKind::Vessel;
}

bool isEquipmentEntry(const LedgerEntry& entry) {
    return entry.kind == EntryKind::Scale || entry.kind == EntryKind::Checked ||
           entry.kind == EntryKind::Vessel;
}

/// What a look at every entry finds.
struct WholeLook {
    std::map<std::string, int> readings;  ///< of each food and kind
    std::vector<long long> indications;   ///< sequences
    int equipment = 0;
    std::string middleId;
};

std::string nameOf(const SeriesKey& key) {
    return key.what + (key.kind == SeriesKind::Ratio ? ", ratio" : ", pieces");
}

WholeLook lookAtAll(const Kitchen& kitchen, long long entries) {
    WholeLook look;
    REQUIRE(kitchen.readLedger([&](const ChainedEntry& chained) {
        if (const auto key = seriesKeyOf(chained.entry)) ++look.readings[nameOf(*key)];
        if (isIndicationEntry(chained.entry)) look.indications.push_back(chained.sequence);
        if (isEquipmentEntry(chained.entry)) ++look.equipment;
        if (chained.sequence == entries / 2) look.middleId = chained.entry.id;
        return true;
    }));
    return look;
}

/// Whether whatever an entry names is among them.
void checkNamedAreThere(const std::vector<ChainedEntry>& entries, const LedgerEntry& of) {
    std::set<std::string> ids;
    for (const ChainedEntry& chained : entries) ids.insert(chained.entry.id);
    for (const std::string& id : {of.tare, of.refersTo, of.takenFrom})
        if (!id.empty()) CHECK(ids.contains(id));
}

void checkPages(const Kitchen& kitchen, const WholeLook& look) {
    std::vector<long long> found;
    long long before = 0;
    for (int page = 0; page < 30; ++page) {
        const auto entries = kitchen.ledgerPage(before, kOnAPage);
        REQUIRE(entries);
        CHECK(std::ranges::is_sorted(*entries, {}, &ChainedEntry::sequence));
        const std::size_t until = look.indications.size() - found.size();
        const long long first = look.indications[until - kOnAPage];
        for (std::size_t i = until; i > until - kOnAPage; --i)
            found.push_back(look.indications[i - 1]);
        const auto at = std::ranges::find(*entries, first, &ChainedEntry::sequence);
        REQUIRE(at != entries->end());
        CHECK(std::ranges::all_of(
            look.indications.begin() + static_cast<long>(until) - kOnAPage,
            look.indications.begin() + static_cast<long>(until), [&](long long sequence) {
                return std::ranges::binary_search(*entries, sequence, {}, &ChainedEntry::sequence);
            }));
        checkNamedAreThere(*entries, entries->back().entry);
        before = first;
    }
}

void checkSeries(const Kitchen& kitchen, const WholeLook& look) {
    const auto kept = kitchen.seriesKept();
    REQUIRE(kept->size() == look.readings.size());
    for (const SeriesSummary& series : *kept)
        CHECK(series.readings == look.readings.at(nameOf(series.key)));
    const SeriesKey& key = kept->front().key;
    const auto entries = kitchen.seriesEntries(key);
    const auto own = std::ranges::count_if(*entries, [&](const ChainedEntry& chained) {
        const auto of = seriesKeyOf(chained.entry);
        return of && sameSeries(*of, key);
    });
    CHECK(own == look.readings.at(nameOf(key)));
}

}  // namespace

TEST_CASE("a ledger of many thousand entries has its pages, series and scales at hand",
          "[kitchen][bench][long]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    BenchWork work{kFoodsWeighed};
    const int asked = entriesAsked();
    REQUIRE(asked >= 20'000);
    fillLedger(kitchen, work, asked);
    CHECK(kitchen.ledgerEnd()->sequence == asked);
    const WholeLook look = lookAtAll(kitchen, asked);
    checkPages(kitchen, look);
    checkSeries(kitchen, look);
    CHECK(kitchen.equipmentEntries()->size() == static_cast<std::size_t>(look.equipment));
    const auto about = kitchen.entriesAbout(look.middleId.substr(0, 13));
    REQUIRE(about);
    CHECK(std::ranges::count(*about, asked / 2, &ChainedEntry::sequence) == 1);
    const auto check = kitchen.verify();
    for (const Error& fault : check->faults) FAIL(said(fault));
    CHECK(check->ledgerEntries == static_cast<std::size_t>(asked));
    CHECK(check->ledgerHead == kitchen.ledgerEnd()->hash);
}

TEST_CASE("one edit deep in a long ledger, and a lost end, are found and named",
          "[kitchen][verify][long]") {
    OneKitchen one;
    const int asked = entriesAsked();
    {
        Kitchen kitchen = one.open();
        BenchWork work{kFoodsWeighed};
        fillLedger(kitchen, work, asked);
    }
    one.leaveUnchecked();
    const auto firstBad = [&one] {
        const auto check = one.open().verify();
        REQUIRE(check);
        REQUIRE(check->faults.size() == 1);
        CHECK(check->faults[0].code == ErrorCode::LedgerBroken);
        return std::string{check->faults[0].value("found")};
    };
    const auto digit = [&one](int entry, const char* from, const char* to) {
        runSql(one.path(), "UPDATE ledger SET entry = replace(entry, '" + std::string{from} +
                               "', '" + to + "') WHERE sequence = " + std::to_string(entry));
    };
    runSql(one.path(), "DROP TRIGGER ledger_is_not_edited; DROP TRIGGER ledger_is_not_shortened");
    const int deep = asked * 6 / 7;
    digit(deep, R"("origin":"typed")", R"("origin":"device")");
    CHECK(firstBad() == std::to_string(deep));
    digit(deep, R"("origin":"device")", R"("origin":"typed")");
    REQUIRE(one.open().verify()->faults.empty());
    runSql(one.path(), "DELETE FROM ledger WHERE sequence > " + std::to_string(asked - 3));
    const auto cut = one.open().verify();
    REQUIRE_FALSE(cut->faults.empty());
    CHECK(cut->faults[0].code == ErrorCode::LedgerBroken);
    CHECK(cut->faults[0].value("found") == std::to_string(asked - 2));
}
