#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// Food versions: see Kitchen.

[[nodiscard]] Result<std::optional<TableFood>> firstVersion(KitchenStore& store,
                                                            const TableRow& row);
[[nodiscard]] Result<void> copyFoodsIn(KitchenStore& store, const std::vector<TableFood>& foods);

/// Adds what is not there yet, inside a transaction; answers the versions, each once.
[[nodiscard]] std::vector<std::string> addVersions(KitchenStore& store,
                                                   const std::vector<TableFood>& foods);

/// The food of a version, read once for as long as there is room; the next call may end its life.
/// Fails: KitchenDamaged.
[[nodiscard]] Result<const TableFood*> foodOfVersion(KitchenStore& store,
                                                     const std::string& version);

/// A stored version. Fails: KitchenDamaged.
[[nodiscard]] Result<TableFood> versionFrom(const KitchenStore& store, const std::string& text);

}  // namespace nettare
