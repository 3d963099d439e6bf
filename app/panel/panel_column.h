#pragma once

#include "app/panel/panel_items.h"
#include "app/panel/wrap_words.h"

#include <vector>

namespace nettare {

/// One entry of a panel: words from the left and, on their last line, words at the right edge.
struct PanelRow {
    std::vector<PanelWord> left;
    std::vector<PanelWord> right;
    int aboveCpt = 0;  ///< between what stands above and the height of the first line's capitals
    int belowCpt = 0;  ///< between the last baseline and what stands below
    int indentCpt = 0;
    int hangCpt = 0;  ///< how much further in the wrapped lines of the left words begin
};

/// Fills a layout from top to bottom between two edges. What is too long is wrapped: the right
/// words go below the left ones where they leave them too little room. Lines of one row stand 1.25
/// of their size apart, which leaves more than the point of leading that 21 CFR 101.9(d)(1)(iii)
/// asks for (from memory).
class PanelColumn {
public:
    PanelColumn(PanelLayout& layout, int leftCpt, int rightCpt, int topCpt,
                const PanelTextWidth& width);

    /// A hairline or bar from the indent to the right edge.
    void rule(int heightCpt, int indentCpt = 0);
    /// Nothing, not even its white, for a row without words.
    void row(const PanelRow& row);
    /// Where the next thing would begin.
    [[nodiscard]] int bottomCpt() const { return bottomCpt_; }

private:
    [[nodiscard]] std::vector<PanelTextLine> rowLines(const PanelRow& row) const;

    PanelLayout& layout_;
    int leftCpt_;
    int rightCpt_;
    int bottomCpt_;
    const PanelTextWidth& width_;
};

}  // namespace nettare
