#pragma once

#include "app/compare/compared_row.h"

#include <vector>

#include "core/publish/comparison.h"

namespace nettare {

/// The lines of a comparison as the table shows them, the batch's total last. Every difference is
/// that of the two numbers beside it.
[[nodiscard]] std::vector<ComparedRow> rowWords(const Comparison& comparison);

}  // namespace nettare
