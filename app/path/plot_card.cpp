#include "app/path/plot_card.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>
#include <QtCharts/QAbstractAxis>
#include <QtCharts/QLegend>

#include "app/path/quiet_plot.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

PlotCard::PlotCard(const QString& heading, QWidget* parent)
    : FocusGroup{heading, parent}, plot_{new QuietPlot{heading}}, note_{new QLabel} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace2Px);
    column->setSpacing(kSpace1Px);
    auto* const title = new QLabel{heading};
    title->setFont(typeFont(TypeSize::Body, Weight::Bold));
    title->setWordWrap(true);
    note_->setFont(figureFont(TypeSize::Header));
    note_->setProperty("tone", QStringLiteral("secondary"));
    note_->setWordWrap(true);
    note_->setTextFormat(Qt::PlainText);
    column->addWidget(title);
    column->addWidget(plot_, 1);
    column->addWidget(note_);
}

void PlotCard::show(QChart* chart, const QString& spoken, const QString& note) {
    plot_->show(chart, spoken);
    setSpoken(spoken);
    note_->setText(note);
    note_->setVisible(!note.isEmpty());
}

void PlotCard::paintEvent(QPaintEvent* event) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    painter.fillRect(rect(), colour(Role::Raised, shade));
    painter.setPen(colour(Role::Hairline, shade));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    painter.end();
    FocusGroup::paintEvent(event);
}

QChart* quietChart() {
    auto* chart = new QChart;
    chart->setAnimationOptions(QChart::NoAnimation);
    chart->setBackgroundVisible(false);
    chart->setPlotAreaBackgroundVisible(false);
    chart->setMargins(QMargins{});
    chart->setContentsMargins(0, 0, 0, 0);
    chart->legend()->hide();
    return chart;
}

void dressAxis(QAbstractAxis& axis, Shade shade, bool grid) {
    axis.setLabelsFont(figureFont(TypeSize::Header));
    axis.setLabelsColor(colour(Role::Ink, shade));
    axis.setTitleFont(figureFont(TypeSize::Header));
    axis.setTitleBrush(colour(Role::Ink2, shade));
    axis.setLinePen(QPen{colour(Role::Outline, shade), 1});
    axis.setGridLinePen(QPen{colour(Role::Hairline, shade), 1});
    axis.setGridLineVisible(grid);
}

}  // namespace nettare
