#include "app/gui/bench/long_ledger.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include "core/support/sha256.h"

namespace nettare {

namespace {

LedgerEntry weighing(int number) {
    LedgerEntry entry;
    entry.id = fmt::format("{:08x}-0000-4000-8000-000000000000", number);
    entry.indication = fmt::format("prawn-{}", number);
    entry.at = fmt::format("2026-05-23T12:{:02}:{:02}+02:00", number / 60 % 60, number % 60);
    entry.shown = Decimal{2710 + number % 90, -1};
    entry.vesselTare = Decimal{2122, -1};
    entry.vessel = "steel bowl";
    entry.unit = "g";
    entry.readability = Decimal{1, -1};
    entry.scale = "counter";
    entry.what = fmt::format("prawn {}", number);
    return entry;
}

}  // namespace

std::shared_ptr<const std::vector<ChainedEntry>> longLedger(int entries) {
    REQUIRE(entries >= 3);
    auto chain = std::make_shared<std::vector<ChainedEntry>>();
    std::string previous;
    for (int i = 1; i <= entries; ++i) {
        ChainedEntry chained{weighing(i), i, previous, {}};
        if (i == entries) {
            chained.entry = {};
            chained.entry.kind = EntryKind::Superseded;
            chained.entry.id = "ffffffff-0000-4000-8000-000000000000";
            chained.entry.at = "2026-05-23T13:59:59+02:00";
            chained.entry.refersTo = chain->back().entry.id;
            chained.entry.reason = "slip of the hand";
        }
        chained.hash = sha256(writeJson(entryJson(chained.entry, i, previous)));
        previous = chained.hash;
        chain->push_back(std::move(chained));
    }
    return chain;
}

}  // namespace nettare
