#pragma once

#include <optional>

#include "app/command_line/show_recipe.h"
#include "app/loading/kept_reference.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Opens a revision with the foods it pinned.
[[nodiscard]] Result<OpenedRecipe> openRevision(const Kitchen& kitchen,
                                                const KeptReference& reference);

/// Opens the recipes of a kitchen by id or start of title: the draft, or a revision with the foods
/// it pinned. `kitchen` and `loader`, which has the table of foods, outlive the answer.
[[nodiscard]] OpenRecipe recipesOf(const Kitchen& kitchen, DossierLoader& loader,
                                   std::optional<int> revision);

}  // namespace nettare
