#include "app/path/interval_chart.h"

#include <QCoreApplication>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>

#include "app/path/plot_card.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

struct IntervalWords {
    Q_DECLARE_TR_FUNCTIONS(IntervalChart)
};

// Heights on the upright axis, which has no scale.
constexpr double kPropagationAt = 0.8, kSimulatedAt = 1.8, kTrialsFrom = 2.2, kTop = 4.0;
constexpr double kIntervalBlockPx = 12;
constexpr double kLimitPx = 3;
constexpr double kAirPart = 0.15;

/// Series of one chart on its two axes.
class IntervalDrawing {
public:
    IntervalDrawing(QChart& chart, QValueAxis& across, QCategoryAxis& up, Shade shade)
        : chart_{chart}, across_{across}, up_{up}, shade_{shade} {}

    void stroke(QPointF from, QPointF to, Role role, double widthPx) {
        auto* const series = new QLineSeries;
        series->append(QList<QPointF>{from, to});
        QPen pen{colour(role, shade_), widthPx};
        pen.setCapStyle(Qt::FlatCap);
        series->setPen(pen);
        add(series);
    }

    void point(QPointF at) {
        auto* const series = new QScatterSeries;
        series->append(at);
        series->setMarkerSize(kIntervalBlockPx);
        series->setColor(colour(Role::Raised, shade_));
        series->setBorderColor(colour(Role::Ink, shade_));
        add(series);
    }

    void trials(const FigurePlot& plot) {
        auto* const edge = new QLineSeries;
        auto* const foot = new QLineSeries;
        const double step =
            (plot.trialsTo - plot.trialsFrom) / static_cast<double>(plot.trials.size());
        for (std::size_t i = 0; i < plot.trials.size(); ++i) {
            const double x = plot.trialsFrom + step * (static_cast<double>(i) + 0.5);
            edge->append(x, kTrialsFrom + plot.trials[i] * (kTop - kTrialsFrom) * 0.95);
            foot->append(x, kTrialsFrom);
        }
        auto* const area = new QAreaSeries{edge, foot};
        // The area takes neither of its lines over.
        edge->setParent(area);
        foot->setParent(area);
        area->setBrush(colour(Role::Selection, shade_));
        area->setPen(QPen{colour(Role::Cobalt, shade_), 1.5});
        add(area);
    }

private:
    void add(QAbstractSeries* series) {
        chart_.addSeries(series);
        series->attachAxis(&across_);
        series->attachAxis(&up_);
    }

    QChart& chart_;
    QValueAxis& across_;
    QCategoryAxis& up_;
    Shade shade_;
};

double upperEnd(const FigurePlot& plot, const FigureInterval& interval, double most) {
    return interval.high ? *interval.high : std::max(plot.value, most);
}

struct Ends {
    double low, high;
};

Ends endsOf(const FigurePlot& plot) {
    Ends ends{plot.interval.low, plot.interval.high.value_or(plot.value)};
    const auto take = [&ends](std::optional<double> value) {
        if (!value) return;
        ends.low = std::min(ends.low, *value);
        ends.high = std::max(ends.high, *value);
    };
    take(plot.ceiling);
    take(plot.floor);
    take(plot.value);
    if (plot.simulated) {
        take(plot.simulated->low);
        take(plot.simulated->high);
    }
    if (!plot.trials.empty()) {
        take(plot.trialsFrom);
        take(plot.trialsTo);
    }
    const double air = std::max((ends.high - ends.low) * kAirPart, 1e-9 + ends.high * 0.01);
    return {std::max(0.0, ends.low - air), ends.high + air};
}

}  // namespace

QChart* intervalChart(const FigurePlot& plot, Shade shade) {
    QChart* const chart = quietChart();
    auto* const across = new QValueAxis;
    auto* const up = new QCategoryAxis;
    chart->addAxis(across, Qt::AlignBottom);
    chart->addAxis(up, Qt::AlignLeft);
    const Ends ends = endsOf(plot);
    across->setRange(ends.low, ends.high);
    across->setTitleText(plot.unit);
    const double top = plot.simulated ? kTop : kSimulatedAt;
    up->setRange(0, top);
    up->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    up->append(IntervalWords::tr("law of<br/>propagation"), kPropagationAt);
    if (plot.simulated) up->append(IntervalWords::tr("simulated"), kSimulatedAt);

    IntervalDrawing drawing{*chart, *across, *up, shade};
    if (!plot.trials.empty()) drawing.trials(plot);
    const double openEnd = ends.high;
    drawing.stroke({plot.interval.low, kPropagationAt},
                   {upperEnd(plot, plot.interval, openEnd), kPropagationAt}, Role::Cobalt,
                   kIntervalBlockPx);
    drawing.point({plot.value, kPropagationAt});
    if (plot.simulated)
        drawing.stroke({plot.simulated->low, kSimulatedAt},
                       {upperEnd(plot, *plot.simulated, openEnd), kSimulatedAt}, Role::Cobalt,
                       kIntervalBlockPx);
    for (const auto& stop : {plot.ceiling, plot.floor})
        if (stop) drawing.stroke({*stop, 0}, {*stop, top}, Role::Warning, kLimitPx);
    across->applyNiceNumbers();
    across->setLabelFormat(across->max() - across->min() < 5 ? QStringLiteral("%.1f")
                                                             : QStringLiteral("%.0f"));
    dressAxis(*across, shade, true);
    dressAxis(*up, shade, false);
    up->setLineVisible(false);
    return chart;
}

QString spokenInterval(const FigurePlot& plot) {
    QStringList parts{IntervalWords::tr("%1 %2 in 95 % by the law of propagation")
                          .arg(plot.intervalText, plot.unit)};
    if (plot.simulated)
        parts << IntervalWords::tr("%1 %2 simulated").arg(plot.simulatedText, plot.unit);
    if (plot.ceiling) parts << IntervalWords::tr("ceiling %1 %2").arg(plot.ceilingText, plot.unit);
    if (plot.floor) parts << IntervalWords::tr("floor %1 %2").arg(plot.floorText, plot.unit);
    return parts.join(QStringLiteral(" · "));
}

}  // namespace nettare
