#include "app/widgets/way_mark.h"

#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace nettare {

namespace {

constexpr double kStrokeShare = 0.12;  // of the mark's side
constexpr int kRingDots = 8;

double strokeOf(const QRectF& box) {
    return std::max(1.5, box.width() * kStrokeShare);
}

QRectF insideStroke(const QRectF& box) {
    const double half = strokeOf(box) / 2;
    return box.adjusted(half, half, -half, -half);
}

QPainterPath diamond(const QRectF& box) {
    const QPointF middle = box.center();
    QPainterPath path{QPointF{middle.x(), box.top()}};
    path.lineTo(box.right(), middle.y());
    path.lineTo(middle.x(), box.bottom());
    path.lineTo(box.left(), middle.y());
    path.closeSubpath();
    return path;
}

/// A package tag: pointed at its left, with a bar of print on it.
QPainterPath tag(const QRectF& box) {
    const double tip = box.width() * 0.34;
    const QRectF body = box.adjusted(0, box.height() * 0.12, 0, -box.height() * 0.12);
    QPainterPath path{QPointF{body.left(), body.center().y()}};
    path.lineTo(body.left() + tip, body.top());
    path.lineTo(body.right(), body.top());
    path.lineTo(body.right(), body.bottom());
    path.lineTo(body.left() + tip, body.bottom());
    path.closeSubpath();
    path.moveTo(body.left() + tip * 1.25, body.center().y());
    path.lineTo(body.right() - body.width() * 0.2, body.center().y());
    return path;
}

void paintRing(QPainter& painter, const QRectF& box, const QColor& ink) {
    const double dot = strokeOf(box) * 0.75;
    const double radius = box.width() / 2 - dot;
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    for (int i = 0; i < kRingDots; ++i) {
        const double turn = 2 * std::numbers::pi * i / kRingDots;
        const QPointF offset{radius * std::cos(turn), radius * std::sin(turn)};
        painter.drawEllipse(box.center() + offset, dot, dot);
    }
}

void paintOutlined(QPainter& painter, const QPainterPath& path, const QRectF& box,
                   const QColor& ink) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{ink, strokeOf(box), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    painter.drawPath(path);
}

}  // namespace

void paintMark(QPainter& painter, Mark mark, const QRectF& box, Shade shade) {
    if (mark == Mark::None) return;
    const QColor ink = colour(roleOf(mark), shade);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, mark != Mark::Weighed);
    if (mark == Mark::Weighed) painter.fillRect(box.toAlignedRect(), ink);
    if (mark == Mark::Label) paintOutlined(painter, tag(insideStroke(box)), box, ink);
    if (mark == Mark::Table || mark == Mark::Density)
        paintOutlined(painter, diamond(insideStroke(box)), box, ink);
    if (mark == Mark::Assumed) paintRing(painter, box, ink);
    painter.restore();
    if (mark == Mark::NoData) paintHatch(painter, box, shade);
}

void paintHatch(QPainter& painter, const QRectF& area, Shade shade) {
    constexpr double kStep = 6.0;
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{colour(Role::Outline, shade), 1.0});
    for (double x = area.left() - area.height(); x < area.right(); x += kStep)
        painter.drawLine(QPointF{x, area.bottom()}, QPointF{x + area.height(), area.top()});
    painter.restore();
}

double markSidePx(const QFont& font) {
    return std::round(figureHeightPx(font) * 1.1);
}

WayMark::WayMark(QWidget* parent) : Readout{parent} {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void WayMark::setMark(Mark mark, const QString& word) {
    mark_ = mark;
    word_ = word.isEmpty() ? wordOf(mark) : word;
    updateGeometry();
    valueChanged();
}

QString WayMark::spokenValue() const {
    return word_;
}

QSize WayMark::sizeHint() const {
    const QFontMetricsF metrics{font()};
    const double width = markSidePx(font()) + kSpace2Px + metrics.horizontalAdvance(word_);
    return {static_cast<int>(std::ceil(width)), static_cast<int>(std::ceil(metrics.height()))};
}

void WayMark::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const double side = markSidePx(font());
    const QRectF box{0, std::round((height() - side) / 2), side, side};
    paintMark(painter, mark_, box, shadeOf(palette()));
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(QRectF{side + kSpace2Px, 0, width() - side - kSpace2Px, height() * 1.0},
                     Qt::AlignLeft | Qt::AlignVCenter, word_);
}

}  // namespace nettare
