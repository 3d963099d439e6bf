#include "app/session/ledger_series.h"

#include "core/ledger/counted_series.h"

namespace nettare {

Result<SeriesToBind> seriesToBind(const Kitchen& kitchen, const SeriesKey& key,
                                  const std::vector<std::string>& tags) {
    const auto entries = kitchen.seriesEntries(key);
    if (!entries) return fail(entries.error());
    const auto checks = kitchen.equipmentEntries();
    if (!checks) return fail(checks.error());
    SeriesToBind series{key, tags, {}, {}, false};
    for (LedgerReading& reading : readingsOf(*entries, *checks)) {
        const auto of = seriesKeyOf(reading.entry());
        const bool wanted = of && sameSeries(*of, key) && bearsTags(reading, tags);
        (wanted ? series.readings : series.tares).push_back(std::move(reading));
    }
    return series;
}

}  // namespace nettare
