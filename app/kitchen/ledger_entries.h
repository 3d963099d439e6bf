#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/ledger/ledger_entry.h"
#include "core/recipe/recipe_document.h"

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

}  // namespace nettare
