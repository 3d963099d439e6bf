#include "app/bench/bench_page.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace nettare {

namespace {

LedgerPage pageOf(std::vector<ChainedEntry> entries, const ScaleChecks& checks, long long before,
                  int most) {
    LedgerPage page;
    page.readings = readingsOf(std::move(entries), checks);
    std::ranges::reverse(page.readings);
    if (before > 0)
        std::erase_if(page.readings, [before](const LedgerReading& reading) {
            return reading.chained.sequence >= before;
        });
    // What they refer to comes with them, and may be older than the page.
    if (page.readings.size() > static_cast<std::size_t>(most)) {
        const auto end = page.readings.begin() + most;
        std::copy_if(end, page.readings.end(), std::back_inserter(page.tares),
                     [](const LedgerReading& reading) { return reading.usedAsTare; });
        page.readings.erase(end, page.readings.end());
        page.hasOlder = true;
    }
    return page;
}

}  // namespace

Result<LedgerPage> readLedgerPage(const Kitchen& kitchen, long long before, int most) {
    auto entries = kitchen.ledgerPage(before, most + 1);
    if (!entries) return fail(entries.error());
    const auto checks = kitchen.scaleChecks();
    if (!checks) return fail(checks.error());
    return pageOf(std::move(*entries), *checks, before, most);
}

Result<BenchState> readBench(const Kitchen& kitchen, int most) {
    BenchState state;
    const auto equipment = kitchen.equipmentEntries();
    if (!equipment) return fail(equipment.error());
    state.equipment = equipmentOf(*equipment);
    auto entries = kitchen.ledgerPage(0, most + 1);
    if (!entries) return fail(entries.error());
    const auto checks = kitchen.scaleChecks();
    if (!checks) return fail(checks.error());
    state.page = pageOf(std::move(*entries), *checks, 0, most);
    auto series = kitchen.seriesKept();
    if (!series) return fail(series.error());
    state.series = std::move(*series);
    const auto end = kitchen.ledgerEnd();
    if (!end) return fail(end.error());
    state.end = *end;
    return state;
}

}  // namespace nettare
