#pragma once

#include <string_view>

#include "core/support/error.h"

namespace nettare {

/// The sentence of an error about a kitchen's own foods, as templateFor() has it; empty for any
/// other.
[[nodiscard]] std::string_view ownFoodTemplateFor(ErrorCode code);

}  // namespace nettare
