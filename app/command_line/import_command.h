#pragma once

#include <iosfwd>

#include "app/command_line/arguments.h"
#include "core/support/result.h"

namespace nettare {

/// Imports a public table into the folder of tablePlaces(), and says on `out` what came of it; how
/// far it is goes to standard error where that is a terminal. Ctrl+C stops it. A CSV without a
/// mapping is not imported: a guess of its mapping goes to `out` as JSON, and a word on that to
/// `err`. Fails: as importTable(); with --mapping as readCsvMapping().
Result<void> importFoods(const ImportCommand& command, std::ostream& out, std::ostream& err);

}  // namespace nettare
