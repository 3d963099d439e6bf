#pragma once

#include <array>
#include <string>

namespace nettare {

using UuidBytes = std::array<unsigned char, 16>;

/// The bytes as a UUID (RFC 4122, version 4), lower case; six bits give way to version and variant.
[[nodiscard]] std::string uuidOf(UuidBytes bytes);

/// A random UUID.
[[nodiscard]] std::string newUuid();

}  // namespace nettare
