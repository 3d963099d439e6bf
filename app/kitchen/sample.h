#pragma once

#include <string>

#include "app/loading/load_dossier.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The demo kitchen of the share folder as a copy in memory: nothing done to it is kept. Fails as
/// Kitchen::openCopy() does.
[[nodiscard]] Result<Kitchen> openSample();

/// Makes the demo kitchen from its folder: the revisions of history.json in their order, each with
/// what its scales showed, and the drafts as they stand now. Times and UUIDs are fixed, so that
/// every build gives the same. Fails as reading, cooking and keeping do.
[[nodiscard]] Result<Kitchen> buildSample(const std::string& folder, DossierLoader& loader);

}  // namespace nettare
