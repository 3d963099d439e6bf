#pragma once

#include <iosfwd>

#include "app/command_line/bench_commands.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Shows what a yield series says, or lists all of the kitchen where no food is named.
/// Fails: SeriesNotFound, SeriesAmbiguous.
Result<void> showSeries(const SeriesCommand& command, const Kitchen& kitchen, DossierLoader& loader,
                        std::ostream& out);

}  // namespace nettare
