#include "app/panel/panel_fonts.h"

#include "app/fonts/lato.h"

#include <QFont>
#include <QFontMetricsF>

#include <cmath>

namespace nettare {

namespace {

/// Least spacing that makes Qt set letter by letter; in pixels of the font, here 0.0002 pt.
constexpr double kSpacingWithoutLigaturesCpt = 0.02;

QString cutOf(PanelFace face) {
    if (face == PanelFace::Black) return QStringLiteral("Black");
    return face == PanelFace::Bold ? QStringLiteral("Bold") : QStringLiteral("Regular");
}

}  // namespace

QFont panelFont(const PanelStyle& style) {
    QFont font{latoFamily()};
    font.setPixelSize(style.sizeCpt);
    // By name, not by weight: Qt 6.4 takes Lato Black for too light at its own weight and strikes
    // it twice.
    font.setStyleName(cutOf(style.face));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::NoSubpixelAntialias);
    font.setLetterSpacing(QFont::AbsoluteSpacing, kSpacingWithoutLigaturesCpt);
    font.setKerning(!style.figures);
    return font;
}

int panelTextWidth(std::string_view text, const PanelStyle& style) {
    const QFontMetricsF metrics{panelFont(style)};
    const auto string = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    return static_cast<int>(std::ceil(metrics.horizontalAdvance(string)));
}

}  // namespace nettare
