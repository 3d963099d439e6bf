#include "app/compare/focus_group.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"

#include <QPainter>

namespace nettare {

FocusGroup::FocusGroup(const QString& name, QWidget* parent) : QWidget{parent} {
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(name);
}

int FocusGroup::ringRoomPx() {
    return kSpace1Px;
}

void FocusGroup::paintEvent(QPaintEvent*) {
    if (!hasFocus()) return;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{colour(Role::Cobalt, shadeOf(palette())), kFocusRingPx});
    painter.drawRoundedRect(rect().adjusted(1, 1, -1, -1), kCornerPx, kCornerPx);
}

void FocusGroup::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void FocusGroup::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace nettare
