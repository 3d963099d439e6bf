#pragma once

#include <cstdint>

#include "core/support/json.h"

namespace nettare {

/// The recipe document with its lines in another order, the same one for the same seed.
[[nodiscard]] Json withLinesShuffled(Json document, std::uint32_t seed);

}  // namespace nettare
