#include "app/widgets/beam_gauge.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/mark.h"
#include "app/widgets/way_mark.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

constexpr double kTickPx = 8;
constexpr double kBlockPx = 14;
constexpr double kValuePx = 22;
constexpr double kStopPx = 30;
constexpr double kStrokePx = 3;
constexpr double kEdgePx = 2;
constexpr int kLeastWidthPx = 160;
/// Room behind the last mark on the scale.
constexpr double kHeadroom = 1.12;

double mostOf(const BeamFigure& figure) {
    double most = 0.0;
    for (const auto& each : {figure.value, figure.low, figure.high, figure.floor, figure.ceiling})
        most = std::max(most, each.value_or(0.0));
    return most;
}

QRectF upright(double x, double line, double width, double height) {
    return {std::round(x - width / 2), std::round(line - height / 2), width, height};
}

QFont stopFont(const QFont& font) {
    return recut(resized(font, std::max(12, font.pixelSize() - 2)), Weight::Semibold);
}

}  // namespace

double tickStep(double most) {
    if (!(most > 0.0)) return 1.0;
    const double rough = most / 8;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double times : {1.0, 2.0, 5.0})
        if (times * power >= rough) return times * power;
    return 10 * power;
}

BeamGauge::BeamGauge(QWidget* parent) : Readout{parent} {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void BeamGauge::setFigure(const BeamFigure& figure) {
    figure_ = figure;
    const double most = mostOf(figure) * kHeadroom;
    step_ = tickStep(most);
    end_ = most > 0.0 ? most : 4 * step_;
    valueChanged();
}

QString BeamGauge::spokenValue() const {
    QStringList parts;
    if (!figure_.value) {
        parts += wordOf(Mark::NoData);
    } else {
        const bool open = figure_.low && !figure_.high;
        const QString text = open ? tr("at least %1 %2") : tr("%1 %2");
        parts += text.arg(figure_.valueText, figure_.unit).trimmed();
        if (!figure_.plusMinusText.isEmpty())
            parts += tr("plus or minus %1").arg(figure_.plusMinusText);
    }
    if (figure_.floor) parts += tr("floor %1").arg(figure_.floorText);
    if (figure_.ceiling) parts += tr("ceiling %1").arg(figure_.ceilingText);
    if (figure_.safe) parts += figure_.safeText;
    return parts.join(QStringLiteral(", "));
}

QSize BeamGauge::sizeHint() const {
    const double text = QFontMetricsF{stopFont(font())}.height();
    return {2 * kLeastWidthPx, static_cast<int>(std::ceil(kStopPx + 2 * text))};
}

QSize BeamGauge::minimumSizeHint() const {
    return {kLeastWidthPx, sizeHint().height()};
}

double BeamGauge::positionOf(double value) const {
    return kEdgePx + std::clamp(value / end_, 0.0, 1.0) * (width() - 2 * kEdgePx);
}

void BeamGauge::paintScale(QPainter& painter, double line) const {
    const QColor ink = colour(Role::Outline, shadeOf(palette()));
    painter.fillRect(QRectF{kEdgePx, line, width() - 2 * kEdgePx, 1}, ink);
    const int ticks = static_cast<int>(std::floor(end_ / step_));
    for (int i = 0; i <= ticks; ++i)
        painter.fillRect(upright(positionOf(i * step_), line, 1, kTickPx), ink);
}

void BeamGauge::paintFigure(QPainter& painter, double line) const {
    const Shade shade = shadeOf(palette());
    if (!figure_.value) {
        paintHatch(painter, QRectF{kEdgePx, line - kBlockPx / 2, width() - 2 * kEdgePx, kBlockPx},
                   shade);
        return;
    }
    const QColor cobalt = colour(Role::Cobalt, shade);
    const double from = positionOf(figure_.low.value_or(*figure_.value));
    const bool open = figure_.low && !figure_.high;
    const double to = open ? width() - kEdgePx : positionOf(figure_.high.value_or(*figure_.value));
    const QRectF block{std::round(from), std::round(line - kBlockPx / 2),
                       std::max(1.0, std::round(to - from)), kBlockPx};
    if (figure_.low || figure_.high) {
        painter.fillRect(block, cobalt);
        painter.fillRect(block.adjusted(1, 1, open ? 0 : -1, -1), colour(Role::Selection, shade));
        if (open) paintHatch(painter, block.adjusted(1, 1, 0, -1), shade);
    }
    painter.fillRect(upright(positionOf(*figure_.value), line, kStrokePx, kValuePx), cobalt);
}

void BeamGauge::paintStop(QPainter& painter, double line, double at, const QString& number,
                          bool above) const {
    const QColor ink = colour(Role::Error, shadeOf(palette()));
    const double x = positionOf(at);
    painter.fillRect(upright(x, line, 2, kStopPx), ink);
    // A foot towards the side that is forbidden, so that a stop is no second value.
    const double y = above ? line - kStopPx / 2 : line + kStopPx / 2 - 2;
    painter.fillRect(QRectF{above ? x - 1 : x - 5, std::round(y), 6, 2}, ink);
    const QFont font = stopFont(this->font());
    const QFontMetricsF metrics{font};
    const double width = metrics.horizontalAdvance(number);
    const double left = std::clamp(x - width / 2, 0.0, std::max(0.0, this->width() - width));
    const double base =
        above ? line - kStopPx / 2 - metrics.descent() - 1 : line + kStopPx / 2 + metrics.ascent();
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(QPointF{left, std::round(base)}, number);
}

void BeamGauge::paintSafe(QPainter& painter, double line) const {
    const double x = std::round(positionOf(*figure_.safe));
    const double top = line + kBlockPx / 2 + 2;
    const QPolygonF notch{{QPointF{x, top}, QPointF{x - 5, top + 8}, QPointF{x + 5, top + 8}}};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(Role::Ink2, shadeOf(palette())));
    painter.drawPolygon(notch);
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void BeamGauge::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const double line = std::floor(height() / 2.0);
    paintScale(painter, line);
    paintFigure(painter, line);
    if (figure_.safe) paintSafe(painter, line);
    if (figure_.floor) paintStop(painter, line, *figure_.floor, figure_.floorText, false);
    if (figure_.ceiling) paintStop(painter, line, *figure_.ceiling, figure_.ceilingText, true);
}

}  // namespace nettare
