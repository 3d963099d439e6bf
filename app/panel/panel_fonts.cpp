#include "app/panel/panel_fonts.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QStringList>

#include <cmath>

namespace nettare {

namespace {

/// Least spacing that makes Qt set letter by letter; in pixels of the font, here 0.0002 pt.
constexpr double kSpacingWithoutLigaturesCpt = 0.02;

/// Loads the faces and returns their common family. A face missing in the program is a fault of
/// its build.
QString loadedFamily() {
    // Fonts that the system has are asked for first: Qt 6.4 would otherwise read them after ours,
    // and its Lato, whatever the release, would take the place of ours.
    QFontDatabase::families();
    QString family;
    for (const char* face : {"Regular", "Bold", "Black"}) {
        const QString path = QStringLiteral(":/nettare/lato/Lato-%1.ttf").arg(QLatin1String{face});
        const int id = QFontDatabase::addApplicationFont(path);
        if (id < 0) qFatal("The program holds no face Lato-%s.", face);
        family = QFontDatabase::applicationFontFamilies(id).constFirst();
    }
    return family;
}

QString cutOf(PanelFace face) {
    if (face == PanelFace::Black) return QStringLiteral("Black");
    return face == PanelFace::Bold ? QStringLiteral("Bold") : QStringLiteral("Regular");
}

}  // namespace

QFont panelFont(const PanelStyle& style) {
    static const QString family = loadedFamily();
    QFont font{family};
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
