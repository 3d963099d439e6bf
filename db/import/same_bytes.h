#pragma once

#include <string>

namespace nettare {

/// True where both files are there and hold the same bytes.
[[nodiscard]] bool sameBytes(const std::string& one, const std::string& other);

}  // namespace nettare
