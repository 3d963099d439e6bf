#pragma once

#include <vector>

#include "app/paper/paper_block.h"
#include "app/path/working_sheet.h"

namespace nettare {

/// The whole sheet in its order, for text of that width.
[[nodiscard]] std::vector<PaperBlock> blocksOf(const WorkingSheet& sheet, double widthCpt);

/// Indices of the blocks that begin a page of that height; the first is 0.
[[nodiscard]] std::vector<std::size_t> pagesOf(const std::vector<PaperBlock>& blocks,
                                               double heightCpt);

}  // namespace nettare
