#pragma once

#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

// Revisions: see Kitchen.

[[nodiscard]] Result<int> keepRevision(KitchenStore& store, const std::string& recipe,
                                       const RevisionToKeep& revision);
[[nodiscard]] Result<std::vector<RevisionSummary>> revisionsOf(KitchenStore& store,
                                                               const std::string& recipe);
[[nodiscard]] Result<StoredRevision> storedRevision(KitchenStore& store, const std::string& recipe,
                                                    int number);
[[nodiscard]] Result<KeptRevision> keptRevision(KitchenStore& store, const std::string& recipe,
                                                int number);

}  // namespace nettare
