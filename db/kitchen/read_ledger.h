#pragma once

#include <functional>
#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// Reading the ledger: see Kitchen.

using Entries = std::vector<ChainedEntry>;

[[nodiscard]] Result<Entries> allEntries(KitchenStore& store);
[[nodiscard]] Result<void> eachEntry(KitchenStore& store,
                                     const std::function<bool(const ChainedEntry&)>& each);
[[nodiscard]] Result<Entries> entriesBefore(KitchenStore& store, long long before, int most);
[[nodiscard]] Result<Entries> entriesOfSeries(KitchenStore& store, const SeriesKey& key);
/// Read on to the end of the ledger; the store keeps it.
[[nodiscard]] Result<const EquipmentRead*> equipmentIn(KitchenStore& store);
[[nodiscard]] Result<Entries> entriesAboutId(KitchenStore& store, const std::string& id);
[[nodiscard]] Result<std::vector<SeriesSummary>> seriesIn(KitchenStore& store);

}  // namespace nettare
