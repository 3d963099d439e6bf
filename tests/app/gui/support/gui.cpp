#include "app/gui/support/gui.h"

#include <QtTest/qtestspontaneevent.h>
#include <QAccessible>
#include <QApplication>
#include <QTest>
#include <QWheelEvent>

namespace nettare {

void showReady(QWidget& widget, QSize size) {
    if (size.isValid()) widget.resize(size);
    widget.show();
    REQUIRE(QTest::qWaitForWindowExposed(&widget));
    widget.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&widget));
}

void typeText(QWidget& widget, const QString& text) {
    widget.setFocus();
    QTest::keyClicks(&widget, text);
}

void pressKey(QWidget& widget, Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(&widget, key, modifiers);
}

void click(QWidget& widget, QPoint at) {
    if (at.x() < 0) at = widget.rect().center();
    QTest::mouseClick(&widget, Qt::LeftButton, Qt::NoModifier, at);
}

void turnWheel(QWidget& widget, int notches) {
    constexpr int kNotch = 120;  // eighths of a degree, by QWheelEvent
    const QPoint at = widget.rect().center();
    QWheelEvent event{QPointF{at},       QPointF{widget.mapToGlobal(at)},
                      QPoint{},          QPoint{0, -kNotch * notches},
                      Qt::NoButton,      Qt::NoModifier,
                      Qt::NoScrollPhase, false};
    // As if it came from the window system; the program gives such a wheel the focus first.
    QSpontaneKeyEvent::setSpontaneous(&event);
    qApp->notify(&widget, &event);
}

bool waitUntil(const std::function<bool()>& condition, int patience_ms) {
    return QTest::qWaitFor(condition, patience_ms);
}

void settle() {
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
}

QImage picture(QWidget& widget) {
    return widget.grab().toImage().convertToFormat(QImage::Format_ARGB32);
}

void keepPicture(QWidget& widget, const QString& name) {
    keepPicture(picture(widget), name);
}

void keepPicture(const QImage& image, const QString& name) {
    const QString folder = qEnvironmentVariable("NETTARE_PICTURES");
    if (!folder.isEmpty()) REQUIRE(image.save(folder + u'/' + name + QStringLiteral(".png")));
}

int pixelsOf(const QImage& image, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) == colour.rgba()) ++count;
    return count;
}

Spoken spokenOf(QWidget& widget) {
    QAccessibleInterface* const spoken = QAccessible::queryAccessibleInterface(&widget);
    if (spoken == nullptr) return {};
    return {spoken->text(QAccessible::Name), spoken->text(QAccessible::Value),
            spoken->text(QAccessible::Description)};
}

}  // namespace nettare
