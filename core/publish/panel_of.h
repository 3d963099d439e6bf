#pragma once

#include "core/label/us_panel.h"
#include "core/nutrition/figures.h"

namespace nettare {

/// The US panel of one portion of the main recipe. Fails: PanelNeedsCookedWeight (the serving size
/// is in grams as eaten), or as usPanel() does.
[[nodiscard]] Result<Panel> usPanelOf(const Dossier& dossier, const Cooked& cooked);

}  // namespace nettare
