#pragma once

#include <string>

namespace nettare {

/// A random UUID (RFC 4122, version 4), lower case.
[[nodiscard]] std::string newUuid();

}  // namespace nettare
