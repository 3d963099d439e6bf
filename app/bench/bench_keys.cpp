#include "app/bench/bench_keys.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace nettare {

namespace {

constexpr int kHeld_ms = 800;

bool isOfNumber(const QKeyEvent& event) {
    if (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) return false;
    const QString text = event.text();
    return text.size() == 1 && (text[0].isDigit() || QStringLiteral(".,-−").contains(text[0]));
}

bool isEnter(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

}  // namespace

BenchKeys::BenchKeys(QLineEdit& number, QObject* parent) : QObject{parent}, number_{number} {
    held_.setSingleShot(true);
    held_.setInterval(kHeld_ms);
    connect(&held_, &QTimer::timeout, this, &BenchKeys::takeBackAsked);
    number_.installEventFilter(this);
}

void BenchKeys::watch(QWidget* widget) {
    widget->installEventFilter(this);
}

// A key that is held down repeats, and must not record twice.
bool BenchKeys::take(QKeyEvent* event) {
    if (event->key() == Qt::Key_Backspace) return takeBackspace(*event);
    held_.stop();
    if (isEnter(*event) || event->key() == Qt::Key_Space) {
        if (!event->isAutoRepeat()) emit recordAsked();
        return true;
    }
    if (!isOfNumber(*event)) return false;
    number_.setFocus();
    number_.end(false);
    number_.insert(event->text());
    return true;
}

// The hold begins on an empty number: a key that emptied it goes on repeating, and takes nothing
// back.
bool BenchKeys::takeBackspace(const QKeyEvent& event) {
    if (event.isAutoRepeat()) {
        if (!number_.text().isEmpty()) number_.backspace();
        return true;
    }
    number_.setFocus();
    if (number_.text().isEmpty())
        held_.start();
    else
        number_.backspace();
    return true;
}

bool BenchKeys::takeRelease(QKeyEvent* event) {
    if (event->key() != Qt::Key_Backspace) return false;
    if (!event->isAutoRepeat()) held_.stop();
    return true;
}

bool BenchKeys::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::FocusOut) held_.stop();
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::KeyRelease) return false;
    auto* const key = static_cast<QKeyEvent*>(event);
    if (event->type() == QEvent::KeyRelease) return takeRelease(key);
    if (object != &number_) return take(key);
    // In the field itself, letters and marks are the field's own matter.
    const bool ours = isEnter(*key) || key->key() == Qt::Key_Space ||
                      (key->key() == Qt::Key_Backspace && !number_.hasSelectedText());
    return ours && take(key);
}

}  // namespace nettare
