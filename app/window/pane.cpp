#include "app/window/pane.h"

#include <QPainter>

#include "app/theme/spacing.h"

namespace nettare {

namespace {

bool takesFocus(const QWidget& widget) {
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0;
}

/// The first place inside that Tab would reach, or null.
QWidget* firstFocusable(QWidget& pane) {
    for (QWidget* next = pane.nextInFocusChain(); next != nullptr && next != &pane;
         next = next->nextInFocusChain())
        if (pane.isAncestorOf(next) && takesFocus(*next)) return next;
    return nullptr;
}

}  // namespace

Pane::Pane(const QString& name, Role ground, QWidget* parent) : QFrame{parent}, ground_{ground} {
    setAccessibleName(name);
    setFrameShape(QFrame::NoFrame);
    setContentsMargins(0, kRimPx, 0, 0);
}

void Pane::setHairlines(Qt::Edges edges) {
    hairlines_ = edges;
    setContentsMargins(edges.testFlag(Qt::LeftEdge) ? 1 : 0, kRimPx,
                       edges.testFlag(Qt::RightEdge) ? 1 : 0,
                       edges.testFlag(Qt::BottomEdge) ? 1 : 0);
    update();
}

void Pane::setActive(bool active) {
    if (active_ == active) return;
    active_ = active;
    update(0, 0, width(), kRimPx);
}

bool Pane::enter() {
    for (QWidget* place : {last_.data(), entry_.data(), firstFocusable(*this)}) {
        if (place == nullptr || !isAncestorOf(place) || !takesFocus(*place)) continue;
        place->setFocus(Qt::ShortcutFocusReason);
        return true;
    }
    return false;
}

void Pane::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(ground_, shade));
    const QColor line = colour(Role::Hairline, shade);
    if (hairlines_.testFlag(Qt::TopEdge)) painter.fillRect(0, 0, width(), 1, line);
    if (hairlines_.testFlag(Qt::BottomEdge)) painter.fillRect(0, height() - 1, width(), 1, line);
    if (hairlines_.testFlag(Qt::LeftEdge)) painter.fillRect(0, 0, 1, height(), line);
    if (hairlines_.testFlag(Qt::RightEdge)) painter.fillRect(width() - 1, 0, 1, height(), line);
    if (active_) painter.fillRect(0, 0, width(), kRimPx, colour(Role::Cobalt, shade));
}

}  // namespace nettare
