#pragma once

#include <iosfwd>

#include "app/command_line/arguments.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Shows the label of a label document, those of a recipe document, or, with a kitchen, that of a
/// labelled food. Answers whether no finding stands open. `kitchen` may be null.
Result<bool> showLabel(const LabelCommand& command, const Kitchen* kitchen, DossierLoader& loader,
                       std::ostream& out);

/// Keeps the label of a document in a kitchen, as a new food or as the next version of one, and
/// tells which published figures that moves. Where a finding stands open it is shown, and nothing
/// is kept. Answers whether it was.
Result<bool> keepLabel(const LabelCommand& command, Kitchen& kitchen, DossierLoader& loader,
                       std::ostream& out);

}  // namespace nettare
