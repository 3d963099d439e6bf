#pragma once

#include <iosfwd>

#include "app/command_line/arguments.h"
#include "app/loading/load_dossier.h"

namespace nettare {

/// Foods of all tables whose names match, with energy, source and completeness; a slip that was
/// forgiven is told in a line of its own. Fails: EmptyText, TableUnreadable.
Result<void> showFoods(const FoodsCommand& command, DossierLoader& loader, std::ostream& out);

/// One food with all that its table says of it. The number alone takes the first table that has
/// it. Fails: EmptyText, FoodNotFound, TableUnreadable.
Result<void> showFood(const FoodCommand& command, DossierLoader& loader, std::ostream& out);

}  // namespace nettare
