#pragma once

#include <cstddef>

#include "core/wording/line_scan.h"

namespace nettare {

/// Reads what stands before the food: flags and marks, number, unit or piece, what one holds.
/// The token where the food begins; `i` is behind "juice of" and its like.
[[nodiscard]] std::size_t readHead(LineScan& scan, std::size_t i);

/// "optional:" and "(optional)" at the front; the token behind them.
[[nodiscard]] std::size_t readFrontFlags(LineScan& scan, std::size_t i);

}  // namespace nettare
