#pragma once

namespace nettare {

/// Starts a QGuiApplication that needs no display, unless an application runs already; fonts need
/// one. It lives until the program ends, so a program with windows starts its own before.
void startPainting();

}  // namespace nettare
