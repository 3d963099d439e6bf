#pragma once

#include <functional>
#include <vector>

#include "app/path/working_sheet.h"

class QPainter;

namespace nettare {

/// A part of the working sheet that no page break cuts. Sizes are centipoints (0.01 pt).
struct SheetBlock {
    double heightCpt = 0;
    std::function<void(QPainter& painter, double topCpt)> paint;
    bool withNext = false;  ///< a heading is not left alone at the foot of a page
};

/// The whole sheet in its order, for text of that width.
[[nodiscard]] std::vector<SheetBlock> blocksOf(const WorkingSheet& sheet, double widthCpt);

/// Indices of the blocks that begin a page of that height; the first is 0.
[[nodiscard]] std::vector<std::size_t> pagesOf(const std::vector<SheetBlock>& blocks,
                                               double heightCpt);

}  // namespace nettare
