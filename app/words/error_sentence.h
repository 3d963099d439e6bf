#pragma once

#include <string>

#include "core/support/error.h"

namespace nettare {

/// One sentence for people: where, what is wrong, what was found, what to do. No line breaks.
[[nodiscard]] std::string errorSentence(const Error& error);

}  // namespace nettare
