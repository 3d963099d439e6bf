#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// Places and sizes of a panel are whole centipoints (0.01 pt, 1 pt = 1/72 inch), counted from the
/// top left corner of its page; names end in Cpt.

/// The faces of the typeface that a panel is set in.
enum class PanelFace { Regular, Bold, Black };

/// How a run of text is set.
struct PanelStyle {
    PanelFace face = PanelFace::Regular;
    int sizeCpt = 0;
    bool figures = false;  ///< an amount or percent: unkerned, so that its digits keep their width

    friend bool operator==(const PanelStyle&, const PanelStyle&) = default;
};

/// Advance width of a text in a style, rounded up to a whole centipoint.
using PanelTextWidth = std::function<int(std::string_view text, const PanelStyle& style)>;

/// A run of text on one line; its left and right edge are those of its advance width.
struct PanelText {
    std::string text;
    PanelStyle style;
    int leftCpt = 0;
    int rightCpt = 0;
    int baselineCpt = 0;
};

/// A filled rectangle: hairline, bar or a side of the box.
struct PanelRule {
    int leftCpt = 0;
    int topCpt = 0;
    int widthCpt = 0;
    int heightCpt = 0;
};

/// A panel ready to be painted.
struct PanelLayout {
    int widthCpt = 0;   ///< of the page; whole points
    int heightCpt = 0;  ///< of the page; whole points
    std::vector<PanelRule> rules;
    std::vector<PanelText> texts;  ///< in the order they are read
};

}  // namespace nettare
