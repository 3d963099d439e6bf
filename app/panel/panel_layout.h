#pragma once

#include "core/label/panel.h"

#include "app/panel/panel_items.h"

namespace nettare {

/// Lays a panel out in the vertical format of 21 CFR 101.9(d) in a box 216 pt wide; its height
/// follows from the texts. Sizes, rules and margins are those of panel_sizes.h. The title is set as
/// large as the width allows; whatever does not fit on its line is wrapped, and no type is set
/// below its least size. The caution stands below the box. Empty texts and lists leave no gap.
[[nodiscard]] PanelLayout layOutPanel(const Panel& panel, const PanelTextWidth& width);

}  // namespace nettare
