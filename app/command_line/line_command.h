#pragma once

#include <iosfwd>

#include "app/command_line/arguments.h"
#include "app/loading/load_dossier.h"

namespace nettare {

/// How an ingredient line is read, and every way to its grams with numbers; of each meaning where
/// one word has two. A temperature, a length or a time is converted. Fails: EmptyText, FoodNotFound
/// for a row that the table does not have.
Result<void> showLine(const LineCommand& command, DossierLoader& loader, std::ostream& out);

}  // namespace nettare
