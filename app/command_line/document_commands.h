#pragma once

#include <iosfwd>

#include "app/command_line/arguments.h"
#include "app/command_line/show_recipe.h"
#include "app/loading/load_dossier.h"

namespace nettare {

/// Opens recipe documents by their path; `loader` outlives the answer.
[[nodiscard]] OpenRecipe documentsOf(DossierLoader& loader);

/// Both examples: their pages of figures, and their panels as files.
Result<void> showDemo(const DemoCommand& command, DossierLoader& loader, std::ostream& out);

}  // namespace nettare
