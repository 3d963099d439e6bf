#include "app/pantry/photo_view.h"

#include <QPainter>
#include <QResizeEvent>

#include <algorithm>

#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kSmallPx = 96, kLargePx = 640;

}  // namespace

PhotoView::PhotoView(QWidget* parent) : QAbstractButton{parent} {
    setObjectName(QStringLiteral("labelPhoto"));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setAccessibleName(tr("Photograph of the package; press for larger or smaller"));
    setToolTip(tr("Larger or smaller"));
    connect(this, &QAbstractButton::toggled, this, &PhotoView::fit);
    hide();
}

void PhotoView::show(const QImage& image) {
    image_ = image;
    setChecked(false);
    setVisible(!image_.isNull());
    fit();
}

QSize PhotoView::shownSize() const {
    if (image_.isNull()) return {};
    const int tall = isChecked() ? kLargePx : kSmallPx;
    return image_.size().scaled(std::max(1, width() - 2 * kFocusRingPx), tall, Qt::KeepAspectRatio);
}

QSize PhotoView::sizeHint() const {
    return {2 * kSmallPx, kSmallPx + 2 * kFocusRingPx};
}

void PhotoView::fit() {
    setFixedHeight(std::max(kControlHeightPx, shownSize().height() + 2 * kFocusRingPx));
    update();
}

void PhotoView::resizeEvent(QResizeEvent* event) {
    QAbstractButton::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) fit();
}

void PhotoView::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    const QRect frame{QPoint{kFocusRingPx, kFocusRingPx}, shownSize()};
    QPainter painter{this};
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(frame, image_);
    painter.setPen(QPen{colour(hasFocus() ? Role::Cobalt : Role::Outline, shade),
                        hasFocus() ? kFocusRingPx : 1.0});
    painter.drawRect(frame.adjusted(-1, -1, 0, 0));
}

}  // namespace nettare
