#pragma once

#include <cstddef>

#include "core/wording/line_scan.h"

namespace nettare {

/// The food phrase with what stands before and within it.
struct FoodRead {
    std::size_t end;      ///< the token at which the food is over
    Span words = {0, 0};  ///< from its first to its last token; others may have tokens between
};

/// Reads from `i` up to the comma, turn or act that ends the food. Acts and sizes before it go to
/// their fields, unless it is bought in a pack and keeps its name whole.
[[nodiscard]] FoodRead readFood(LineScan& scan, std::size_t i);

}  // namespace nettare
