#include "app/path/bar_chart.h"

#include <QtCharts/QBarCategoryAxis>
#include <QtCharts/QBarSet>
#include <QtCharts/QHorizontalBarSeries>
#include <QtCharts/QValueAxis>

#include "app/path/plot_card.h"
#include "app/path/wrapped_text.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr double kNamePx = 190;
constexpr double kBarPart = 0.45;  // of the room that a bar has

/// As an axis takes it: broken into lines, and unlike every other.
QString axisName(const PlotBar& bar, int place) {
    QStringList lines;
    for (const QString& line : wrappedLines(bar.name + QStringLiteral("  ") + bar.text,
                                            figureFont(TypeSize::Header), kNamePx))
        lines << line.toHtmlEscaped();
    return lines.join(QStringLiteral("<br/>")) + QString(place, QChar{0x200B});
}

}  // namespace

QChart* barChart(const std::vector<PlotBar>& bars, const QString& axis, Shade shade) {
    QChart* const chart = quietChart();
    auto* const set = new QBarSet{axis};
    auto* const names = new QBarCategoryAxis;
    QStringList categories;
    // An axis counts from the foot up.
    for (auto bar = bars.rbegin(); bar != bars.rend(); ++bar) {
        set->append(bar->value);
        categories << axisName(*bar, static_cast<int>(categories.size()));
    }
    set->setColor(colour(Role::Table, shade));
    set->setBorderColor(colour(Role::Table, shade));
    names->append(categories);
    auto* const series = new QHorizontalBarSeries;
    series->setBarWidth(kBarPart);
    series->append(set);
    chart->addSeries(series);
    auto* const scale = new QValueAxis;
    scale->setTitleText(axis);
    chart->addAxis(names, Qt::AlignLeft);
    chart->addAxis(scale, Qt::AlignBottom);
    series->attachAxis(names);
    series->attachAxis(scale);
    scale->applyNiceNumbers();
    scale->setLabelFormat(scale->max() < 5 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
    dressAxis(*names, shade, false);
    dressAxis(*scale, shade, true);
    return chart;
}

QString spokenBars(const std::vector<PlotBar>& bars) {
    QStringList parts;
    for (const PlotBar& bar : bars) parts << QStringLiteral("%1: %2").arg(bar.name, bar.text);
    return parts.join(QStringLiteral("; "));
}

}  // namespace nettare
