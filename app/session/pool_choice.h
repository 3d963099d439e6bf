#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/ledger/ledger_reading.h"
#include "core/weighing/judgement.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Readings of the ledger that another series is pooled with.
struct EarlierSeries {
    SeriesKey key;
    std::vector<std::string> tags;    ///< they bear all of these
    std::vector<std::string> noneOf;  ///< and none of these
    /// And not all of these, since those are the readings that are pooled with them; sorted.
    std::vector<std::string> apartFrom;

    friend bool operator==(const EarlierSeries&, const EarlierSeries&) = default;
};

/// What the spread of a series is pooled with: nothing, the usual spread, or an earlier series.
struct PoolChoice {
    bool usual = false;
    std::optional<EarlierSeries> earlier{};  ///< goes before the usual one

    friend bool operator==(const PoolChoice&, const PoolChoice&) = default;
};

/// "prawn meat", "prawn meat, 2025", "prawn meat without 2026".
[[nodiscard]] std::string earlierName(const EarlierSeries& series);

/// Whether a reading is one of them by its conditions.
[[nodiscard]] bool isOfEarlier(const LedgerReading& reading, const EarlierSeries& series);

/// The spread by those readings that count; nothing where fewer than two do. Runs in the store's
/// thread. Fails like Kitchen::seriesEntries().
[[nodiscard]] Result<std::optional<EarlierSpread>> earlierSpread(const Kitchen& kitchen,
                                                                 const EarlierSeries& series);

/// What was chosen for each series, split by its conditions, while a window is open.
class PoolChoices {
public:
    void choose(const SeriesKey& key, const std::vector<std::string>& tags, PoolChoice choice);
    /// Nothing where nothing was chosen.
    [[nodiscard]] std::optional<PoolChoice> of(const SeriesKey& key,
                                               const std::vector<std::string>& tags) const;

private:
    using Split = std::pair<SeriesKey, std::vector<std::string>>;
    static Split split(const SeriesKey& key, std::vector<std::string> tags);

    std::vector<std::pair<Split, PoolChoice>> chosen_;  ///< each split once
};

}  // namespace nettare
