#pragma once

#include "app/compare/compared_row.h"
#include "app/widgets/cell.h"

namespace nettare {

/// The cell of a row in a column of CompareModel. What it was on the other side is for screen
/// readers only: on the screen it stands at the left.
[[nodiscard]] Cell compareCell(const ComparedRow& row, int column);

}  // namespace nettare
