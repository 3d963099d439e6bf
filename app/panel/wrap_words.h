#pragma once

#include "app/panel/panel_items.h"

#include <string>
#include <vector>

namespace nettare {

/// A word with the style it is set in.
struct PanelWord {
    std::string text;
    PanelStyle style;
};

/// The runs of one line, left to right; neighbours in one style are one run.
using PanelTextLine = std::vector<PanelText>;

/// Where wrapped words may stand.
struct PanelMeasure {
    int leftCpt = 0;
    int rightCpt = 0;
    int hangCpt = 0;  ///< how much further in the second and later lines begin
};

/// The words of a text in one style; blanks part them and are dropped.
[[nodiscard]] std::vector<PanelWord> panelWords(std::string_view text, const PanelStyle& style);

/// The words in lines that end at the measure's right edge or before it, baselines not yet set. A
/// word too wide for a line of its own is broken between two characters. No words give no lines.
[[nodiscard]] std::vector<PanelTextLine> wrapWords(const std::vector<PanelWord>& words,
                                                   const PanelMeasure& measure,
                                                   const PanelTextWidth& width);

}  // namespace nettare
