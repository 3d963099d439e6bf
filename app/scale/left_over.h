#pragma once

#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "core/edit/line_edits.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// What is left over, as a cook says it before it is weighed.
struct LeftOver {
    ResidueKind kind = ResidueKind::Unknown;
    std::vector<std::string> lines;  ///< ids, in the recipe's order; one for Line
    std::optional<int> mixedAt;      ///< of Mixture: number of the step, from 1
    std::vector<ShareEntry> shares;  ///< of Mixture: what the document says of parts of lines
    FoodChoice drip;                 ///< of Drip; no name while none was chosen
    std::string called;              ///< "marinade"; may be empty
};

/// What a residue of the document is.
[[nodiscard]] LeftOver leftOverOf(const Json& document, const Json& residue);

/// True where a weighing of the one is one of the other too: of the same lines or food, and no two
/// names.
[[nodiscard]] bool isSame(const LeftOver& a, const LeftOver& b);
[[nodiscard]] bool isSame(const ResidueEntry& residue, const LeftOver& left);

/// Index of the document's residue that this is; nothing where it has none yet.
[[nodiscard]] std::optional<std::size_t> residueLike(const Json& document, const LeftOver& left);

/// What to begin with: the last mixture that something was left of; else what the first step that
/// names several lines mixes; else the line that the cursor is on; else unknown.
[[nodiscard]] LeftOver suggestedLeftOver(const Json& document, const std::string& line);

/// The same without lines and steps that the document does not have any more.
[[nodiscard]] LeftOver stillThere(const Json& document, LeftOver left);

/// True once it says all that a weighing needs: lines are ticked, the food that ran off is chosen.
[[nodiscard]] bool isComplete(const LeftOver& left);

}  // namespace nettare
