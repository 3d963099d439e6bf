#pragma once

#include <QSizeF>

class QScreen;

namespace nettare {

/// What a screen says of itself.
struct ScreenMeasure {
    QSizeF sizePx;           ///< logical pixels
    QSizeF sizeMm;           ///< of the glass; empty where the screen does not say
    double dotsAnInch = 96;  ///< logical, as the desktop assumes it
};
[[nodiscard]] ScreenMeasure measureOf(const QScreen& screen);

/// How large a point (1/72 inch) has to be painted so that it measures one on the glass.
struct TrueSize {
    double pxPerPoint = 96.0 / 72;
    bool measured = false;  ///< by the screen's own measure; else as the desktop assumes it
};

/// Believes the screen where its pixels are square (within 8 %) and 50 to 400 an inch: many report
/// no size, a round one, or that of another screen.
[[nodiscard]] TrueSize trueSizeOn(const ScreenMeasure& screen);

}  // namespace nettare
