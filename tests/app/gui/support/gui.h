#pragma once

#include <catch2/catch.hpp>

#include <QColor>
#include <QImage>
#include <QKeySequence>
#include <QPoint>
#include <QSize>
#include <QString>
#include <QWidget>

#include <functional>

namespace nettare {

/// Waits longer than any machine should need; a test that hits it has failed.
inline constexpr int kPatience_ms = 10'000;

/// Shows the widget at a size and waits until it is painted and active.
void showReady(QWidget& widget, QSize size = {});

/// The descendant with this object name. The test fails where there is none, or of another type.
template <class W = QWidget>
[[nodiscard]] W& child(QWidget& root, const char* name) {
    W* const found = root.findChild<W*>(QString::fromLatin1(name));
    INFO("child named " << name);
    REQUIRE(found != nullptr);
    return *found;
}

/// Key by key into the widget, which is given the focus first.
void typeText(QWidget& widget, const QString& text);
void pressKey(QWidget& widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

/// Left click at a point of the widget; at its middle without one.
void click(QWidget& widget, QPoint at = {-1, -1});

/// One notch of the wheel, towards the user, where the pointer stands over the widget's middle.
void turnWheel(QWidget& widget, int notches = 1);

/// Lets events run until the condition holds; false after `patience_ms`.
[[nodiscard]] bool waitUntil(const std::function<bool()>& condition,
                             int patience_ms = kPatience_ms);

/// Lets everything that is due now run.
void settle();

[[nodiscard]] QImage picture(QWidget& widget);

/// Writes a PNG into the folder that the environment names by NETTARE_PICTURES; without it nothing.
void keepPicture(QWidget& widget, const QString& name);
void keepPicture(const QImage& image, const QString& name);

/// How many pixels of the image have exactly this colour.
[[nodiscard]] int pixelsOf(const QImage& image, const QColor& colour);

/// What a screen reader says for a widget: name, value, description. Empty where it says nothing.
struct Spoken {
    QString name, value, description;
};
[[nodiscard]] Spoken spokenOf(QWidget& widget);

}  // namespace nettare
