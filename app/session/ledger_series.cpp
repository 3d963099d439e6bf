#include "app/session/ledger_series.h"

#include <algorithm>

#include "core/ledger/counted_series.h"

namespace nettare {

namespace {

/// As fine as a document writes a number, and never nothing.
Decimal writtenSpread(double spread) {
    constexpr Decimal kStep{1, -6};
    const Decimal stepped = roundedToStep(Decimal::fromDouble(spread), kStep);
    return Decimal::fromDouble(std::max(kStep, stepped).value());
}

}  // namespace

Result<SeriesToBind> seriesToBind(const Kitchen& kitchen, const SeriesKey& key,
                                  const std::vector<std::string>& tags) {
    auto entries = kitchen.seriesEntries(key);
    if (!entries) return fail(entries.error());
    const auto checks = kitchen.scaleChecks();
    if (!checks) return fail(checks.error());
    SeriesToBind series{key, tags, {}, {}, {}};
    for (LedgerReading& reading : readingsOf(std::move(*entries), *checks)) {
        const auto of = seriesKeyOf(reading.entry());
        const bool wanted = of && sameSeries(*of, key) && bearsTags(reading, tags);
        (wanted ? series.readings : series.tares).push_back(std::move(reading));
    }
    return series;
}

Result<std::optional<SeriesPooling>> poolingBy(const Kitchen& kitchen,
                                               const std::optional<PoolChoice>& choice) {
    if (!choice) return std::optional<SeriesPooling>{};
    SeriesPooling pooling{choice->usual, {}};
    if (!choice->earlier) return std::optional{std::move(pooling)};
    const auto earlier = earlierSpread(kitchen, *choice->earlier);
    if (!earlier) return fail(earlier.error());
    if (*earlier)
        pooling.earlier = EarlierEntry{(*earlier)->name, writtenSpread((*earlier)->known.spread),
                                       Decimal::fromDouble((*earlier)->known.freedom)};
    return std::optional{std::move(pooling)};
}

}  // namespace nettare
