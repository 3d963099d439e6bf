#pragma once

#include <string>

namespace nettare {

/// The time of this moment as ISO 8601 with seconds and the offset of the place.
[[nodiscard]] std::string now();

}  // namespace nettare
