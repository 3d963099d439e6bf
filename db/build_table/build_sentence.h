#pragma once

#include <string>

#include "core/support/error.h"

namespace nettare {

/// One sentence for whoever keeps the text tables, led by file and line as compilers do:
/// "foods.txt:12: the number 01001 is there twice (column number)."
[[nodiscard]] std::string buildSentence(const Error& error);

}  // namespace nettare
