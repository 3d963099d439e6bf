#pragma once

#include "core/support/json.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The document of a draft: its base with the edits before the cursor. Fails: EditDoesNotFit.
[[nodiscard]] Result<Json> documentOf(const StoredDraft& draft);

}  // namespace nettare
