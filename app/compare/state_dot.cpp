#include "app/compare/state_dot.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/plain_tip.h"

#include <QPainter>

namespace nettare {

namespace {

constexpr int kDotPx = 12;
constexpr int kDotLeftPx = kSpace2Px;

}  // namespace

StateDot::StateDot(const QString& text, const QString& spoken, bool draft, QWidget* parent)
    : QPushButton{text, parent}, spoken_{spoken}, draft_{draft} {
    setCheckable(true);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setToolTip(plainTip(spoken));
    setAccessibleName(spoken);
}

void StateDot::setSide(DotSide side) {
    side_ = side;
    setChecked(side != DotSide::None);
    switch (side) {
        case DotSide::None:
            setAccessibleName(spoken_);
            break;
        case DotSide::Left:
            setAccessibleName(tr("%1, compared on the left").arg(spoken_));
            break;
        case DotSide::Right:
            setAccessibleName(tr("%1, compared on the right").arg(spoken_));
            break;
    }
    update();
}

int StateDot::dotRightPx() {
    return kDotLeftPx + kDotPx;
}

QSize StateDot::sizeHint() const {
    const QFontMetrics widest{figureFont(TypeSize::Body, Weight::Bold)};
    return {dotRightPx() + kSpace2Px + widest.horizontalAdvance(text()) + kSpace2Px,
            kControlHeightPx};
}

void StateDot::paintDot(QPainter& painter) const {
    const Shade shade = shadeOf(palette());
    const bool chosen = side_ != DotSide::None;
    const QColor ink = colour(chosen ? Role::Cobalt : Role::Outline, shade);
    QPen pen{ink, 2};
    if (draft_) pen.setDashPattern({2.1, 1.1});
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.setBrush(chosen && !draft_ ? QBrush{ink} : Qt::NoBrush);
    const QRectF ring{kDotLeftPx + 1.0, (height() - kDotPx) / 2.0 + 1, kDotPx - 2.0, kDotPx - 2.0};
    painter.drawEllipse(ring);
    if (!chosen || !draft_) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawEllipse(ring.adjusted(2.5, 2.5, -2.5, -2.5));
}

void StateDot::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Shade shade = shadeOf(palette());
    if (underMouse() || isDown()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(Role::Alt, shade));
        painter.drawRoundedRect(rect(), kCornerPx, kCornerPx);
    }
    paintDot(painter);
    const bool chosen = side_ != DotSide::None;
    painter.setFont(figureFont(TypeSize::Body, chosen ? Weight::Bold : Weight::Regular));
    painter.setPen(colour(chosen ? Role::Ink : Role::Ink2, shade));
    painter.drawText(rect().adjusted(dotRightPx() + kSpace2Px, 0, 0, 0),
                     Qt::AlignLeft | Qt::AlignVCenter, text());
    if (!hasFocus()) return;
    painter.setPen(QPen{colour(Role::Cobalt, shade), kFocusRingPx});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(rect().adjusted(1, 1, -1, -1), kCornerPx, kCornerPx);
}

}  // namespace nettare
