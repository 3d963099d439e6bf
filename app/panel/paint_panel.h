#pragma once

#include "app/panel/panel_items.h"

class QPainter;

namespace nettare {

/// Paints a laid out panel: a white page, black rules and texts, whatever the palette says. The one
/// paint function for PDF, print and screen: the painter's unit must be 0.01 pt, by the resolution
/// of its device or by its scale. Leaves the painter as it was.
void paintPanel(QPainter& painter, const PanelLayout& layout);

}  // namespace nettare
