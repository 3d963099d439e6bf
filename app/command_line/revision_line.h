#pragma once

#include <string>

#include "app/command_line/arguments.h"
#include "app/loading/kept_reference.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Computes a kept revision anew with the foods it pinned and says it in one line, ended by a line
/// feed: with command.json one JSON object (recipe, revision, basis, what the figures are of, and
/// per component value, u, nu, low, high, at_least, at_most), else a row of a table (recipe,
/// revision, energy). Where the stored figures come out otherwise today, "kept" holds those of the
/// basis that do, and the row says so. Fails as reading, cooking and figuresPer() do.
[[nodiscard]] Result<std::string> revisionLine(const FiguresCommand& command,
                                               const Kitchen& kitchen,
                                               const KeptReference& reference);

/// What stands above the rows of the table, ended by a line feed; nothing with command.json.
[[nodiscard]] std::string headingOfRows(const FiguresCommand& command);

}  // namespace nettare
