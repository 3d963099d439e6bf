#pragma once

#include <string>
#include <vector>

#include "core/edit/edit.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Drafts that are to use one version of an own food in place of others.
struct DraftsToMove {
    std::vector<std::string> recipes;
    std::vector<std::string> numbers;  ///< own foods whose rows give way, in whatever version
    TableFood to;
};

/// Moves the drafts on, each by an edit of its own that undo takes back; all of them or none. Runs
/// where the kitchen is used. Fails: as Kitchen::journal() does.
[[nodiscard]] Result<void> moveDraftsOn(Kitchen& kitchen, const DraftsToMove& moved,
                                        const std::string& at);

}  // namespace nettare
