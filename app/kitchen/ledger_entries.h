#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/ledger/bench_equipment.h"
#include "core/recipe/recipe_document.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// What whoever adds documents brings from outside: the time, and a new UUID at every call.
struct Adding {
    std::string at;  ///< ISO 8601 with offset
    std::function<std::string()> newId;
};

/// What the scales of a document showed, as entries of a ledger in the document's order, with
/// `recipe` as its id. An indication without a time gets that of the adding.
[[nodiscard]] std::vector<LedgerEntry> ledgerEntriesOf(const RecipeDocument& document,
                                                       const std::string& recipe,
                                                       const Adding& adding);

/// The scales and vessels of a document whose names the kitchen does not know yet.
[[nodiscard]] std::vector<LedgerEntry> equipmentEntriesOf(const RecipeDocument& document,
                                                          const BenchEquipment& known,
                                                          const Adding& adding);

/// Records what of a document goes to a ledger: equipment first, then what its scales showed.
/// Answers how many indications there were. Fails as Kitchen::record().
[[nodiscard]] Result<std::size_t> recordDocument(Kitchen& kitchen, const RecipeDocument& document,
                                                 const std::string& recipe, const Adding& adding);

}  // namespace nettare
