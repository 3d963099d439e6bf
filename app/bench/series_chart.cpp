#include "app/bench/series_chart.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

#include "app/bench/bench_type.h"
#include "app/path/plot_card.h"

namespace nettare {

namespace {

struct ChartWords {
    Q_DECLARE_TR_FUNCTIONS(SeriesPlot)
};

constexpr double kReadingPx = 16, kDiamondPx = 24, kMeanBarPx = 8, kMeanDotPx = 18;
constexpr double kDotRowPx = 18;
/// Names of the rows need their own height.
constexpr double kNamedRowPx = 40;
constexpr double kBinsPx = 110;
constexpr int kAxisPx = 58, kInTimePx = 260;

/// Heights of the rows in pixels, from the foot up.
struct RowPlaces {
    double readings = 0, published = 0, mean = 0, top = 0;
    double firstDot = 0;
};

RowPlaces placesOf(const SeriesPlot& plot) {
    RowPlaces places;
    const double dots = plot.bins.empty() ? std::min(plot.rows, 12.0) * kDotRowPx : kBinsPx;
    double at = std::max(dots, kNamedRowPx);
    places.firstDot = kDotRowPx / 2 + (at - dots) / 2;
    places.readings = at / 2;
    if (plot.published) {
        places.published = at + kNamedRowPx / 2;
        at += kNamedRowPx;
    }
    if (plot.mean) {
        places.mean = at + kNamedRowPx / 2;
        at += kNamedRowPx;
    }
    places.top = at;
    return places;
}

/// A hollow ring with a cross, twice as fine as it is shown.
QImage crossedRing(const QColor& ink, const QColor& ground) {
    constexpr int kSide = 4 * static_cast<int>(kReadingPx);
    QImage image{kSide, kSide, QImage::Format_ARGB32_Premultiplied};
    image.fill(Qt::transparent);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{ink, 7});
    painter.setBrush(ground);
    constexpr double kEdge = 5, kCross = 16;
    painter.drawEllipse(QRectF{kEdge, kEdge, kSide - 2 * kEdge, kSide - 2 * kEdge});
    painter.drawLine(QPointF{kCross, kCross}, QPointF{kSide - kCross, kSide - kCross});
    painter.drawLine(QPointF{kSide - kCross, kCross}, QPointF{kCross, kSide - kCross});
    return image;
}

/// Marks and bars of one chart. Values lie along `value`, the rows or the order along `other`.
class SeriesDrawing {
public:
    SeriesDrawing(QChart& chart, QAbstractAxis& across, QAbstractAxis& up, Shade shade)
        : chart_{chart}, across_{across}, up_{up}, shade_{shade} {}

    void marks(const QList<QPointF>& points, QScatterSeries::MarkerShape shape, double sizePx,
               Role fill, Role edge, double edgePx) {
        if (points.empty()) return;
        auto* const series = new QScatterSeries;
        series->append(points);
        series->setMarkerShape(shape);
        series->setMarkerSize(sizePx);
        series->setColor(colour(fill, shade_));
        series->setPen(QPen{colour(edge, shade_), edgePx});
        add(series);
    }

    void crossed(const QList<QPointF>& points) {
        if (points.empty()) return;
        auto* const series = new QScatterSeries;
        series->append(points);
        series->setMarkerSize(kReadingPx);
        series->setColor(Qt::transparent);
        series->setPen(Qt::NoPen);
        series->setLightMarker(
            crossedRing(colour(Role::Ink2, shade_), colour(Role::Raised, shade_)));
        add(series);
    }

    void stroke(QPointF from, QPointF to, Role role, double widthPx) {
        auto* const series = new QLineSeries;
        series->append(QList<QPointF>{from, to});
        QPen pen{colour(role, shade_), widthPx};
        pen.setCapStyle(Qt::FlatCap);
        series->setPen(pen);
        add(series);
    }

    void area(const QList<QPointF>& edge, double foot, Role fill, const QPen& pen) {
        auto* const upper = new QLineSeries;
        auto* const lower = new QLineSeries;
        for (const QPointF& point : edge) {
            upper->append(point);
            lower->append(point.x(), foot);
        }
        auto* const series = new QAreaSeries{upper, lower};
        // The area takes neither of its lines over.
        upper->setParent(series);
        lower->setParent(series);
        series->setBrush(colour(fill, shade_));
        series->setPen(pen);
        add(series);
    }

    [[nodiscard]] QColor ink(Role role) const { return colour(role, shade_); }

private:
    void add(QAbstractSeries* series) {
        chart_.addSeries(series);
        series->attachAxis(&across_);
        series->attachAxis(&up_);
    }

    QChart& chart_;
    QAbstractAxis &across_, &up_;
    Shade shade_;
};

void dressSeriesAxis(QAbstractAxis& axis, Shade shade, bool grid) {
    dressAxis(axis, shade, grid);
    axis.setLabelsFont(benchFigures());
    axis.setTitleFont(benchFont());
}

/// A step of 1, 2 or 5 times a power of ten that parts the width at most `most` times.
double niceStep(double width, int most) {
    const double raw = std::max(width, 1e-9) / most;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * power >= raw) return step * power;
    return 10 * power;
}

void setScale(QValueAxis& axis, const SeriesPlot& plot) {
    const bool ratio = plot.unit.isEmpty();
    const double times = ratio ? 100 : 1;
    const double low = plot.low * times, high = plot.high * times;
    const double step = niceStep(high - low, 4);
    axis.setRange(low, high);
    axis.setTickType(QValueAxis::TicksDynamic);
    axis.setTickAnchor(0);
    axis.setTickInterval(step);
    const int decimals = std::clamp(-static_cast<int>(std::floor(std::log10(step) + 1e-9)), 0, 4);
    axis.setLabelFormat(
        QStringLiteral("%.%1f %2").arg(decimals).arg(ratio ? QStringLiteral("%%") : plot.unit));
}

double drawn(const SeriesPlot& plot, double value) {
    return plot.unit.isEmpty() ? 100 * value : value;
}

/// Within the ends, so that a wide interval is cut at the edge and not drawn over its name.
double within(const SeriesPlot& plot, double value) {
    return drawn(plot, std::clamp(value, plot.low, plot.high));
}

void drawDots(SeriesDrawing& drawing, const SeriesPlot& plot,
              const std::function<QPointF(const PlotDot&)>& place) {
    QList<QPointF> counted, doubted, leftOut;
    for (const PlotDot& dot : plot.dots)
        (dot.kind == DotKind::Counted   ? counted
         : dot.kind == DotKind::Doubted ? doubted
                                        : leftOut)
            << place(dot);
    drawing.marks(counted, QScatterSeries::MarkerShapeCircle, kReadingPx, Role::Weighed,
                  Role::Raised, 1);
    drawing.marks(doubted, QScatterSeries::MarkerShapeTriangle, kReadingPx + 2, Role::Warning,
                  Role::Raised, 1);
    drawing.crossed(leftOut);
}

void drawBins(SeriesDrawing& drawing, const SeriesPlot& plot) {
    const double width = (plot.high - plot.low) / static_cast<double>(plot.bins.size());
    QList<QPointF> edge;
    for (std::size_t i = 0; i < plot.bins.size(); ++i) {
        const double left = plot.low + width * static_cast<double>(i);
        edge << QPointF{drawn(plot, left), plot.bins[i] * kBinsPx * 0.95}
             << QPointF{drawn(plot, left + width), plot.bins[i] * kBinsPx * 0.95};
    }
    drawing.area(edge, 0, Role::Weighed, Qt::NoPen);
}

void drawByWeight(QChart& chart, const SeriesPlot& plot, Shade shade) {
    const RowPlaces places = placesOf(plot);
    auto* const across = new QValueAxis;
    auto* const up = new QCategoryAxis;
    chart.addAxis(across, Qt::AlignBottom);
    chart.addAxis(up, Qt::AlignLeft);
    setScale(*across, plot);
    up->setRange(0, places.top);
    up->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    up->append(ChartWords::tr("readings"), places.readings);
    if (plot.published) up->append(ChartWords::tr("table"), places.published);
    if (plot.mean) up->append(ChartWords::tr("mean, 95 %"), places.mean);
    SeriesDrawing drawing{chart, *across, *up, shade};
    if (!plot.bins.empty()) drawBins(drawing, plot);
    const double rowPx = std::min(kDotRowPx, 12 * kDotRowPx / std::max(1.0, plot.rows));
    drawDots(drawing, plot, [&](const PlotDot& dot) {
        return QPointF{drawn(plot, dot.value), places.firstDot + dot.level * rowPx};
    });
    if (plot.published)
        drawing.marks({{drawn(plot, *plot.published), places.published}},
                      QScatterSeries::MarkerShapeRotatedRectangle, kDiamondPx, Role::Raised,
                      Role::Table, 2);
    if (plot.mean) {
        drawing.stroke({within(plot, plot.mean->value - plot.mean->within), places.mean},
                       {within(plot, plot.mean->value + plot.mean->within), places.mean},
                       Role::Weighed, kMeanBarPx);
        drawing.marks({{drawn(plot, plot.mean->value), places.mean}},
                      QScatterSeries::MarkerShapeCircle, kMeanDotPx, Role::Raised, Role::Weighed,
                      3);
    }
    dressSeriesAxis(*across, shade, true);
    dressSeriesAxis(*up, shade, false);
    up->setLineVisible(false);
}

void drawInTime(QChart& chart, const SeriesPlot& plot, Shade shade) {
    auto* const across = new QValueAxis;
    auto* const up = new QValueAxis;
    chart.addAxis(across, Qt::AlignBottom);
    chart.addAxis(up, Qt::AlignLeft);
    setScale(*up, plot);
    up->setTickInterval(niceStep(up->max() - up->min(), 4));
    const double last = plot.rows + 0.5;
    across->setRange(0.5, last);
    across->setTickType(QValueAxis::TicksDynamic);
    across->setTickAnchor(0);
    across->setTickInterval(std::max(1.0, niceStep(plot.rows, 8)));
    across->setLabelFormat(QStringLiteral("%.0f"));
    SeriesDrawing drawing{chart, *across, *up, shade};
    if (plot.mean) {
        const double top = within(plot, plot.mean->value + plot.mean->within);
        drawing.area({{0.5, top}, {last, top}}, within(plot, plot.mean->value - plot.mean->within),
                     Role::Selection, Qt::NoPen);
        const double mean = drawn(plot, plot.mean->value);
        drawing.stroke({0.5, mean}, {last, mean}, Role::Weighed, 2);
    }
    drawDots(drawing, plot, [&](const PlotDot& dot) {
        return QPointF{dot.level, drawn(plot, dot.value)};
    });
    dressSeriesAxis(*across, shade, false);
    dressSeriesAxis(*up, shade, true);
}

}  // namespace

QChart* seriesChart(const SeriesPlot& plot, Shade shade) {
    QChart* const chart = quietChart();
    if (plot.order == PlotOrder::InTime)
        drawInTime(*chart, plot, shade);
    else
        drawByWeight(*chart, plot, shade);
    return chart;
}

int seriesChartHeight(const SeriesPlot& plot) {
    if (plot.order == PlotOrder::InTime) return kInTimePx;
    return static_cast<int>(placesOf(plot).top) + kAxisPx;
}

}  // namespace nettare
