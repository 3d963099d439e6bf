#pragma once

#include <string_view>

#include "core/support/error.h"

namespace nettare {

/// The sentence of an error about scales, readings and series, as templateFor() has it; empty for
/// any other.
[[nodiscard]] std::string_view benchTemplateFor(ErrorCode code);

/// The same where there is nothing that could be named instead: "known" is empty.
[[nodiscard]] std::string_view benchTemplateOfNone(ErrorCode code);

/// The same where another reading, "other", has a part in it.
[[nodiscard]] std::string_view benchTemplateOfTwo(ErrorCode code);

}  // namespace nettare
