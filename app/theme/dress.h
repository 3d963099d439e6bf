#pragma once

#include "app/theme/palette.h"

class QApplication;

namespace nettare {

/// Dresses the whole program: Fusion, palette, style sheet, Lato. May be called again at any time;
/// open windows follow at once.
void dress(QApplication& application, Shade shade);

}  // namespace nettare
