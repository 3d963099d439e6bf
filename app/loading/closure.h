#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/recipe/dossier.h"
#include "core/support/json.h"
#include "db/food_tables.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// What a document of a kitchen needs beside itself, at hand in memory: rows of tables, and kept
/// recipes by the reference that a food entry gives, "barley-patties#2" (recipe id and revision).
struct Closure {
    std::vector<TableFood> foods;
    std::map<std::string, Json, std::less<>> recipes;

    /// The row, or nothing.
    [[nodiscard]] const TableFood* food(const TableRow& row) const;
};

/// The closure of a draft: rows in the version that the kitchen used first, else as the tables
/// have them. A row that nobody has is left out; makeDossier() says so at its place.
[[nodiscard]] Result<Closure> closureOfDraft(const Kitchen& kitchen, const Json& document,
                                             const FoodTables& tables);

/// The closure of a revision: its pinned rows and the revisions that it uses, never today's.
[[nodiscard]] Result<Closure> closureOfRevision(const Kitchen& kitchen,
                                                const KeptRevision& revision);
[[nodiscard]] Result<Closure> closureOfRevision(const Kitchen& kitchen, const Json& document,
                                                const std::vector<PinnedFood>& foods);

/// Resolves a document with its closure. Errors carry `name` as their file.
[[nodiscard]] Result<Dossier> dossierOf(const Json& document, const std::string& name,
                                        const Closure& closure);
/// The same for a document that was read already.
[[nodiscard]] Result<Dossier> dossierOf(const LoadedRecipe& recipe, const Closure& closure);

}  // namespace nettare
