#pragma once

#include <vector>

#include "core/ledger/bench_equipment.h"
#include "core/ledger/ledger_reading.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A part of the ledger as its list shows it.
struct LedgerPage {
    std::vector<LedgerReading> readings;  ///< newest first
    std::vector<LedgerReading> tares;     ///< of those, from before the page
    bool hasOlder = false;
};

/// What the bench knows of a kitchen before anything is chosen.
struct BenchState {
    BenchEquipment equipment;
    LedgerPage page;
    LedgerEnd end;
    std::vector<SeriesSummary> series;
};

/// At most `most` indications before a sequence, 0: the newest ones. Fails like the calls of
/// Kitchen that it makes.
[[nodiscard]] Result<LedgerPage> readLedgerPage(const Kitchen& kitchen, long long before, int most);

/// The same of everything, with the newest page.
[[nodiscard]] Result<BenchState> readBench(const Kitchen& kitchen, int most);

}  // namespace nettare
