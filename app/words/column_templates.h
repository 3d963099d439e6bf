#pragma once

#include <string_view>

#include "core/support/error.h"

namespace nettare {

/// The sentence of an error in the columns, rows and cells of a CSV of foods, as templateFor() has
/// it; empty for any other.
[[nodiscard]] std::string_view columnTemplateFor(ErrorCode code);

}  // namespace nettare
