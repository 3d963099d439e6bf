#include "app/icons/icon_engine.h"

#include <QApplication>
#include <QFile>
#include <QPainter>
#include <QPixmapCache>
#include <QSvgRenderer>

#include <array>
#include <cstddef>

namespace nettare {

namespace {

/// In the order of Sign.
constexpr std::array kSignFiles{
    "add",   "remove", "up",    "down", "undo", "redo",    "search", "keep", "compare",
    "panel", "back",   "close", "more", "info", "warning", "error",  "done", "nettare",
};

const char* fileOf(Sign sign) {
    return kSignFiles[static_cast<std::size_t>(sign)];
}

QByteArray drawingOf(Sign sign) {
    QFile file{QStringLiteral(":/nettare/icons/%1.svg").arg(QLatin1String{fileOf(sign)})};
    if (!file.open(QIODevice::ReadOnly)) qFatal("The program holds no icon %s.", fileOf(sign));
    return file.readAll();
}

/// QSvgRenderer takes currentColor for black, so the colour is written into the drawing.
QPixmap drawn(Sign sign, const QColor& ink, const QSize& pixels) {
    QByteArray drawing = drawingOf(sign);
    drawing.replace("currentColor", ink.name().toLatin1());
    QSvgRenderer renderer{drawing};
    renderer.setAspectRatioMode(Qt::KeepAspectRatio);
    QPixmap pixmap{pixels};
    pixmap.fill(Qt::transparent);
    QPainter painter{&pixmap};
    renderer.render(&painter);
    return pixmap;
}

QPixmap cached(Sign sign, const QColor& ink, const QSize& pixels) {
    const QString key = QStringLiteral("nettare/%1/%2/%3x%4")
                            .arg(QLatin1String{fileOf(sign)}, ink.name())
                            .arg(pixels.width())
                            .arg(pixels.height());
    QPixmap pixmap;
    if (!QPixmapCache::find(key, &pixmap)) {
        pixmap = drawn(sign, ink, pixels);
        QPixmapCache::insert(key, pixmap);
    }
    return pixmap;
}

}  // namespace

QPixmap IconEngine::scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State, qreal scale) {
    const Shade shade = shadeOf(QApplication::palette());
    const Role role = mode == QIcon::Disabled ? Role::Outline : ink_;
    QPixmap pixmap = cached(sign_, colour(role, shade), size);
    pixmap.setDevicePixelRatio(scale);
    return pixmap;
}

QPixmap IconEngine::pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) {
    return scaledPixmap(size, mode, state, 1.0);
}

void IconEngine::paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) {
    const qreal ratio = painter->device()->devicePixelRatioF();
    painter->drawPixmap(rect, scaledPixmap(rect.size() * ratio, mode, state, ratio));
}

QIconEngine* IconEngine::clone() const {
    return new IconEngine{sign_, ink_};
}

QString IconEngine::key() const {
    return QStringLiteral("nettare");
}

QIcon iconOf(Sign sign, Role ink) {
    return QIcon{new IconEngine{sign, ink}};
}

QPixmap signPixmap(Sign sign, const QColor& ink, int sizePx, qreal pixelRatio) {
    QPixmap pixmap = cached(sign, ink, QSize{sizePx, sizePx} * pixelRatio);
    pixmap.setDevicePixelRatio(pixelRatio);
    return pixmap;
}

}  // namespace nettare
