#pragma once

#include "app/panel/panel_items.h"

class QFont;

namespace nettare {

/// Lato in a style, sized in centipoints: one pixel of the font is 0.01 pt. Unhinted and without
/// ligatures, so that a PDF can be searched for "fibre". Needs a QGuiApplication (startPainting).
/// The three faces come from the program itself and are loaded once.
[[nodiscard]] QFont panelFont(const PanelStyle& style);

/// Widths as paintPanel sets them. Needs a QGuiApplication.
[[nodiscard]] int panelTextWidth(std::string_view text, const PanelStyle& style);

}  // namespace nettare
