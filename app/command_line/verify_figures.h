#pragma once

#include <vector>

#include "core/support/error.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// RevisionChanged for each revision of today's arithmetic whose stored figures are not what its
/// document and its pinned foods give. Those that a fault of `found` names are left out.
[[nodiscard]] std::vector<Error> changedFigures(const Kitchen& kitchen,
                                                const std::vector<Error>& found);

}  // namespace nettare
