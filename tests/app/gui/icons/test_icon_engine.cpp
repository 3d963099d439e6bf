#include "app/icons/icon_engine.h"

#include "app/gui/support/gui.h"
#include "app/theme/dress.h"

#include <QApplication>
#include <QPainter>
#include <QToolButton>

namespace nettare {

namespace {

constexpr int kSigns = static_cast<int>(Sign::Nettare) + 1;

QImage imageOf(const QIcon& icon, QIcon::Mode mode, qreal ratio = 1.0) {
    return icon.pixmap(QSize{24, 24}, ratio, mode).toImage().convertToFormat(QImage::Format_ARGB32);
}

/// Every pixel that covers the ground fully has this one colour, and there are some.
bool wearsOnly(const QImage& image, const QColor& ink) {
    int opaque = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qAlpha(image.pixel(x, y)) == 255) {
                ++opaque;
                if (image.pixel(x, y) != ink.rgba()) return false;
            }
    return opaque > 4;
}

}  // namespace

TEST_CASE("icons wear the palette's ink, enabled and disabled, by day and night") {
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        dress(*qApp, shade);
        for (int sign = 0; sign < kSigns; ++sign) {
            INFO("sign " << sign);
            const QIcon icon = iconOf(static_cast<Sign>(sign));
            CHECK(wearsOnly(imageOf(icon, QIcon::Normal), colour(Role::Ink, shade)));
            CHECK(wearsOnly(imageOf(icon, QIcon::Disabled), colour(Role::Outline, shade)));
        }
        const QIcon onCobalt = iconOf(Sign::Keep, Role::OnCobalt);
        CHECK(wearsOnly(imageOf(onCobalt, QIcon::Normal), colour(Role::OnCobalt, shade)));
    }
    dress(*qApp, Shade::Light);
}

TEST_CASE("an icon is drawn at the resolution of its screen") {
    const QIcon icon = iconOf(Sign::Compare);
    CHECK(imageOf(icon, QIcon::Normal, 2.0).size() == QSize{48, 48});
    CHECK(imageOf(icon, QIcon::Normal, 1.5).size() == QSize{36, 36});
    CHECK(icon.pixmap(QSize{24, 24}, 2.0).devicePixelRatio() == 2.0);
}

TEST_CASE("the icon of an open button follows the shade") {
    QToolButton button;
    button.setIcon(iconOf(Sign::Remove));
    button.setIconSize({24, 24});
    button.setAccessibleName(QStringLiteral("Remove the line"));
    showReady(button, {48, 48});
    CHECK(pixelsOf(picture(button), colour(Role::Ink, Shade::Light)) > 4);
    dress(*qApp, Shade::Dark);
    CHECK(pixelsOf(picture(button), colour(Role::Ink, Shade::Dark)) > 4);
    button.setEnabled(false);
    CHECK(pixelsOf(picture(button), colour(Role::Ink, Shade::Dark)) == 0);
    CHECK(pixelsOf(picture(button), colour(Role::Outline, Shade::Dark)) > 4);
    dress(*qApp, Shade::Light);
}

TEST_CASE("the signs can be looked at side by side") {
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        QImage sheet{QSize{48 * kSigns, 96}, QImage::Format_ARGB32};
        sheet.fill(colour(Role::Paper, shade));
        QPainter painter{&sheet};
        for (int sign = 0; sign < kSigns; ++sign)
            painter.drawPixmap(
                48 * sign + 4, 4,
                signPixmap(static_cast<Sign>(sign), colour(Role::Ink, shade), 40, 1));
        for (int sign = 0; sign < kSigns; ++sign)
            painter.drawPixmap(
                48 * sign + 4, 60,
                signPixmap(static_cast<Sign>(sign), colour(Role::Ink, shade), 20, 1));
        painter.end();
        keepPicture(sheet,
                    shade == Shade::Light ? QStringLiteral("signs") : QStringLiteral("signs-dark"));
        CHECK(pixelsOf(sheet, colour(Role::Ink, shade)) > kSigns * 20);
    }
}

}  // namespace nettare
