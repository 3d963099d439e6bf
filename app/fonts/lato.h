#pragma once

#include <QString>

namespace nettare {

/// Loads the program's own faces of Lato once and returns their common family. A face missing in
/// the program is a fault of its build and ends it. Needs a QGuiApplication.
[[nodiscard]] QString latoFamily();

}  // namespace nettare
