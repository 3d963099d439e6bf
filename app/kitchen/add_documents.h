#pragma once

#include <string>
#include <vector>

#include "app/kitchen/ledger_entries.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A document that became a recipe of a kitchen.
struct AddedRecipe {
    std::string document;  ///< path
    std::string title, recipe;
    std::size_t indications = 0;  ///< new entries of the ledger
};

/// Adds recipe documents, each as a recipe with revision 1, in one change of the kitchen: all of
/// them or none. Documents that they use go in before them, and their references become "id#1";
/// one that the kitchen keeps already is used as it is kept. Foods are pinned as the kitchen used
/// them first, else as the table has them. Answers what was added, in that order.
/// Fails as reading and cooking the documents does; AlreadyKept for a named document that the
/// kitchen keeps; as the kitchen does.
[[nodiscard]] Result<std::vector<AddedRecipe>> addDocuments(Kitchen& kitchen,
                                                            const std::vector<std::string>& paths,
                                                            DossierLoader& loader,
                                                            const Adding& adding);

}  // namespace nettare
