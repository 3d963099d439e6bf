#include "app/path/quiet_plot.h"

#include <QPainter>
#include <QVBoxLayout>
#include <QtCharts/QChartView>

#include <memory>

namespace nettare {

QuietPlot::QuietPlot(const QString& name, QWidget* parent)
    : QWidget{parent}, view_{new QChartView} {
    view_->setRenderHint(QPainter::Antialiasing);
    view_->setFocusPolicy(Qt::NoFocus);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setInteractive(false);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setBackgroundBrush(Qt::NoBrush);
    view_->setProperty("onPaper", true);
    view_->viewport()->setAutoFillBackground(false);
    view_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    view_->setAccessibleName(name);
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(view_);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void QuietPlot::show(QChart* chart, const QString& spoken) {
    const std::unique_ptr<QChart> before{view_->chart()};
    view_->setChart(chart);
    view_->setAccessibleDescription(spoken);
}

}  // namespace nettare
