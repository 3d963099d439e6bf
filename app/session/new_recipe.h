#pragma once

#include <string>

#include "core/support/json.h"

namespace nettare {

/// The document of a recipe that has a title and nothing else yet: one piece, one a portion, a
/// scale that shows whole grams, no lines.
[[nodiscard]] Json newRecipeDocument(const std::string& title);

}  // namespace nettare
