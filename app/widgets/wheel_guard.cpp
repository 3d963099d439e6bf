#include "app/widgets/wheel_guard.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QScrollBar>
#include <QTabBar>

namespace nettare {

namespace {

bool wheelEdits(const QWidget* widget) {
    const bool slider = qobject_cast<const QAbstractSlider*>(widget) != nullptr &&
                        qobject_cast<const QScrollBar*>(widget) == nullptr;
    return slider || qobject_cast<const QAbstractSpinBox*>(widget) != nullptr ||
           qobject_cast<const QComboBox*>(widget) != nullptr ||
           qobject_cast<const QTabBar*>(widget) != nullptr;
}

/// The field that a widget is or is a part of; a popup of a field is no part of it.
QWidget* fieldAround(QWidget* widget) {
    for (; widget != nullptr; widget = widget->parentWidget()) {
        if (wheelEdits(widget)) return widget;
        if (widget->isWindow()) return nullptr;
    }
    return nullptr;
}

bool hasFocusInside(const QWidget* field) {
    const QWidget* const focused = QApplication::focusWidget();
    return focused != nullptr && (focused == field || field->isAncestorOf(focused));
}

}  // namespace

WheelGuard::WheelGuard(QObject* parent) : QObject{parent} {
    qApp->installEventFilter(this);
}

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish) return false;
    auto* const widget = qobject_cast<QWidget*>(watched);
    if (widget == nullptr) return false;
    if (event->type() == QEvent::Polish) {
        // The wheel would give the focus first and edit then.
        if (wheelEdits(widget) && widget->focusPolicy() == Qt::WheelFocus)
            widget->setFocusPolicy(Qt::StrongFocus);
        return false;
    }
    const QWidget* const field = fieldAround(widget);
    if (field == nullptr || hasFocusInside(field)) return false;
    // Ignored and eaten: QApplication goes on to the parent.
    event->ignore();
    return true;
}

}  // namespace nettare
