#include "app/panel_screen/true_size.h"

#include <QScreen>

#include <cmath>

namespace nettare {

namespace {

constexpr double kMmAnInch = 25.4;
constexpr double kPointsAnInch = 72;
constexpr double kLeastDotsAnInch = 50, kMostDotsAnInch = 400;
constexpr double kMostUnevenness = 0.08;

bool credible(double acrossAnInch, double downAnInch) {
    const double uneven = std::abs(acrossAnInch / downAnInch - 1);
    return acrossAnInch >= kLeastDotsAnInch && acrossAnInch <= kMostDotsAnInch &&
           uneven <= kMostUnevenness;
}

}  // namespace

ScreenMeasure measureOf(const QScreen& screen) {
    return {QSizeF{screen.size()}, screen.physicalSize(), screen.logicalDotsPerInch()};
}

TrueSize trueSizeOn(const ScreenMeasure& screen) {
    if (screen.sizePx.isEmpty() || screen.sizeMm.isEmpty())
        return {screen.dotsAnInch / kPointsAnInch, false};
    const double acrossAnInch = screen.sizePx.width() / screen.sizeMm.width() * kMmAnInch;
    const double downAnInch = screen.sizePx.height() / screen.sizeMm.height() * kMmAnInch;
    if (!credible(acrossAnInch, downAnInch)) return {screen.dotsAnInch / kPointsAnInch, false};
    return {(acrossAnInch + downAnInch) / 2 / kPointsAnInch, true};
}

}  // namespace nettare
