#include "app/theme/type.h"

#include "app/fonts/lato.h"

#include <QFontMetricsF>

namespace nettare {

namespace {

QString cutNamed(Weight weight) {
    switch (weight) {
        case Weight::Semibold:
            return QStringLiteral("Semibold");
        case Weight::Bold:
            return QStringLiteral("Bold");
        case Weight::Regular:
            break;
    }
    return QStringLiteral("Regular");
}

}  // namespace

QFont typeFont(TypeSize size, Weight weight) {
    QFont font{latoFamily()};
    font.setPixelSize(static_cast<int>(size));
    font.setStyleName(cutNamed(weight));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::NoSubpixelAntialias);
    return font;
}

QFont figureFont(TypeSize size, Weight weight) {
    QFont font = typeFont(size, weight);
    font.setKerning(false);
    return font;
}

QFont resized(const QFont& font, int sizePx) {
    QFont other = font;
    other.setPixelSize(sizePx);
    return other;
}

QFont recut(const QFont& font, Weight weight) {
    QFont other = font;
    other.setStyleName(cutNamed(weight));
    return other;
}

double figureHeightPx(const QFont& font) {
    return QFontMetricsF{font}.capHeight();
}

}  // namespace nettare
