#pragma once

#include "app/revisions/revision_model.h"
#include "app/session/kitchen_session.h"

namespace nettare {

/// The row of a revision: its energy per portion as it was kept, and whether its targets are met.
/// Where today's arithmetic comes out otherwise, the energy says so.
[[nodiscard]] RevisionFigures revisionFiguresOf(const OpenedRevision& revision);

}  // namespace nettare
