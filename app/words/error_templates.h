#pragma once

#include <string_view>

#include "core/support/error.h"

namespace nettare {

/// The sentence of an error code with {name} where a value of the error goes.
[[nodiscard]] std::string_view templateFor(ErrorCode code);

}  // namespace nettare
