#pragma once

#include <optional>
#include <string>

#include "app/loading/closure.h"
#include "core/support/json.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A document with everything that keeping it stores: its figures, computed now, and every table
/// row of its closure. `at` is ISO 8601 with offset; `parent` the number of the revision that it
/// was made from. Fails where the document has no figures, with a pointer into it.
[[nodiscard]] Result<RevisionToKeep> revisionToKeep(const Json& document, const Closure& closure,
                                                    const std::string& note, const std::string& at,
                                                    std::optional<int> parent);

}  // namespace nettare
