#pragma once

#include <functional>
#include <map>
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

/// What a ledger has of a document already: UUIDs of entries.
struct InLedger {
    /// Of its indications, by their ids, which are those of the entries; and whether the entry is a
    /// net there, by a tare of its own.
    std::map<std::string, bool> indications;
    std::map<std::string, std::string> vessels;  ///< what weighed them empty, by their ids
};

/// What the scales of a document showed, as entries of a ledger in the document's order, with
/// `recipe` as its id. An indication without a time gets that of the adding; one that the ledger
/// has is left out, and the others refer to it.
[[nodiscard]] std::vector<LedgerEntry> ledgerEntriesOf(const RecipeDocument& document,
                                                       const std::string& recipe,
                                                       const Adding& adding, const InLedger& known);

/// The indications of a document whose ids are those of entries of the ledger that show the same on
/// the same scale, as where a draft that the bench weighed for was exported and is added again; and
/// its vessels. Fails as the kitchen does.
[[nodiscard]] Result<InLedger> inLedger(const Kitchen& kitchen, const RecipeDocument& document);

/// The scales and vessels of a document whose names the kitchen does not know yet.
[[nodiscard]] std::vector<LedgerEntry> equipmentEntriesOf(const RecipeDocument& document,
                                                          const BenchEquipment& known,
                                                          const Adding& adding);

/// Records what of a document goes to a ledger: equipment first, then what its scales showed.
/// Answers how many indications were new to the ledger. Fails as Kitchen::record().
[[nodiscard]] Result<std::size_t> recordDocument(Kitchen& kitchen, const RecipeDocument& document,
                                                 const std::string& recipe, const Adding& adding);

}  // namespace nettare
