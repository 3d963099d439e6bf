#pragma once

#include <vector>

#include "db/build_table/table_text.h"

namespace nettare {

/// The foods in the order of their rows, best first: plain before processed before composed; within
/// each the everyday foods in their order, then the others by number.
[[nodiscard]] std::vector<const TableFood*> inRowOrder(const TableText& text);

}  // namespace nettare
