#include "app/window/window_place.h"

#include <QWidget>

#include "app/theme/user_settings.h"

namespace nettare {

namespace {

// Another layout of the window would get another name, and begin anew.
QString placeKey() {
    return QStringLiteral("window/place1");
}

constexpr int kFirstWidth = 1280;
constexpr int kFirstHeight = 800;

}  // namespace

void restorePlace(QWidget& window) {
    const QByteArray place = userSettings()->value(placeKey()).toByteArray();
    if (place.isEmpty() || !window.restoreGeometry(place)) window.resize(kFirstWidth, kFirstHeight);
}

void rememberPlace(const QWidget& window) {
    userSettings()->setValue(placeKey(), window.saveGeometry());
}

}  // namespace nettare
