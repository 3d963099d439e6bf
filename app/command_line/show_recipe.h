#pragma once

#include <functional>
#include <iosfwd>
#include <optional>
#include <string>

#include "app/command_line/arguments.h"
#include "app/command_line/kept_figures.h"
#include "core/nutrition/figures.h"
#include "core/recipe/dossier.h"
#include "core/support/result.h"

namespace nettare {

/// A recipe with everything computed once.
struct OpenedRecipe {
    Dossier dossier;
    Cooked cooked;
    std::optional<KeptFigures> kept;  ///< of a revision
};

/// Computes a dossier. Fails as cook() does.
[[nodiscard]] Result<OpenedRecipe> opened(Dossier dossier);

/// Opens a recipe as the command line names it.
using OpenRecipe = std::function<Result<OpenedRecipe>(const std::string& recipe)>;

// Each writes its result to `out`, or answers why there is none.
Result<void> showFigures(const FiguresCommand& command, const OpenRecipe& open, std::ostream& out);
Result<void> showPath(const PathCommand& command, const OpenRecipe& open, std::ostream& out);
Result<void> showStatement(const StatementCommand& command, const OpenRecipe& open,
                           std::ostream& out);
Result<void> writePanel(const PanelCommand& command, const OpenRecipe& open, std::ostream& out);

/// An error with the argument that is at fault as its place.
[[nodiscard]] Error ofArgument(std::string_view argument, Error error);

}  // namespace nettare
