#pragma once

#include "app/gui/window/demo_window.h"

namespace nettare {

/// Types what the scale shows and records it with Enter; the window follows before it returns.
void recordShown(DemoWindow& demo, const QString& shown);

/// Opens the other example, which has no residues and leaves a range open.
void openPatties(DemoWindow& demo);

}  // namespace nettare
