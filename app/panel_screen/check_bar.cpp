#include "app/panel_screen/check_bar.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QPainter>

namespace nettare {

namespace {

constexpr double kBarMm = 50;
constexpr double kPointsPerMm = 72 / 25.4;
constexpr int kCheckTickPx = 9;

}  // namespace

CheckBar::CheckBar(QWidget* parent) : QWidget{parent} {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setFont(figureFont(TypeSize::Caption));
    setAccessibleName(tr("Check bar, 50 mm at true size"));
}

void CheckBar::setScale(double pxPerPoint) {
    pxPerPoint_ = pxPerPoint;
    updateGeometry();
    update();
}

double CheckBar::lengthPx() const {
    return kBarMm * kPointsPerMm * pxPerPoint_;
}

QSize CheckBar::sizeHint() const {
    return {qRound(lengthPx()) + 2, kCheckTickPx + kSpace1Px + fontMetrics().height()};
}

void CheckBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    const QColor ink = colour(Role::Ink, shade);
    const double right = lengthPx();
    painter.fillRect(QRectF{0, kCheckTickPx / 2.0 - 0.5, right, 1}, ink);
    painter.fillRect(QRectF{0, 0, 1, kCheckTickPx}, ink);
    painter.fillRect(QRectF{right - 1, 0, 1, kCheckTickPx}, ink);
    painter.setPen(colour(Role::Ink2, shade));
    painter.drawText(rect().adjusted(0, kCheckTickPx + kSpace1Px, 0, 0),
                     Qt::AlignHCenter | Qt::AlignTop, tr("50 mm"));
}

}  // namespace nettare
