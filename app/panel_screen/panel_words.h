#pragma once

#include "app/panel/panel_items.h"

#include <QStringList>

namespace nettare {

/// The printed lines of a panel in the order they are read, as a screen reader says them: what
/// stands on one line is one text.
[[nodiscard]] QStringList panelWordsOf(const PanelLayout& layout);

}  // namespace nettare
