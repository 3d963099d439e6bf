#pragma once

#include "app/revisions/revision_model.h"
#include "app/session/kitchen_session.h"

namespace nettare {

/// The row of a revision: its energy per portion, as recomputed with its pinned foods, and whether
/// its targets are met.
[[nodiscard]] RevisionFigures revisionFiguresOf(const Evaluation& evaluation);

}  // namespace nettare
