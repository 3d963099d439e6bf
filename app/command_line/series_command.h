#pragma once

#include <iosfwd>

#include "app/command_line/bench_commands.h"
#include "app/command_line/show_recipe.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Shows what a yield series says, or lists all of the kitchen where no food is named.
/// `open` opens a recipe of the kitchen. Fails: SeriesNotFound, SeriesAmbiguous, SeriesNotFollowed.
Result<void> showSeries(const SeriesCommand& command, const Kitchen& kitchen, DossierLoader& loader,
                        const OpenRecipe& open, std::ostream& out);

}  // namespace nettare
