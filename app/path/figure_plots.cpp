#include "app/path/figure_plots.h"

#include <QEvent>
#include <QGridLayout>

#include "app/path/bar_chart.h"
#include "app/path/interval_chart.h"
#include "app/path/plot_card.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kLeastPlotPx = 240;
constexpr int kBarRoomPx = 40;

}  // namespace

FigurePlots::FigurePlots(QWidget* parent)
    : QScrollArea{parent},
      lines_{new PlotCard{tr("What each line brings")}},
      shares_{new PlotCard{tr("What makes it unsure")}},
      interval_{new PlotCard{tr("Interval against ceiling and floor")}} {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    lines_->setObjectName(QStringLiteral("linePlot"));
    shares_->setObjectName(QStringLiteral("sharePlot"));
    interval_->setObjectName(QStringLiteral("intervalPlot"));
    auto* const page = new QWidget;
    auto* const grid = new QGridLayout{page};
    grid->setContentsMargins(kSpace4Px, kSpace4Px, kSpace4Px, kSpace4Px);
    grid->setSpacing(kSpace4Px);
    grid->addWidget(lines_, 0, 0, 2, 1);
    grid->addWidget(shares_, 0, 1);
    grid->addWidget(interval_, 1, 1);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    for (PlotCard* card : {shares_, interval_}) card->setMinimumHeight(kLeastPlotPx);
    setWidget(page);
    page->setAutoFillBackground(false);
}

void FigurePlots::show(FigurePlot plot) {
    plot_ = std::move(plot);
    draw();
}

void FigurePlots::draw() {
    const Shade shade = drawn_ = shadeOf(lines_->palette());
    const FigurePlot& plot = *plot_;
    lines_->setMinimumHeight(kLeastPlotPx / 2 + kBarRoomPx * static_cast<int>(plot.lines.size()));
    lines_->show(barChart(plot.lines, plot.unit, shade), spokenBars(plot.lines));
    shares_->setMinimumHeight(kLeastPlotPx / 2 + kBarRoomPx * static_cast<int>(plot.shares.size()));
    shares_->show(barChart(plot.shares, tr("% of the variance"), shade), spokenBars(plot.shares));
    interval_->show(intervalChart(plot, shade), spokenInterval(plot), spokenInterval(plot));
}

// Not while the palette is on its way to all that is in here.
void FigurePlots::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() != QEvent::PaletteChange && event->type() != QEvent::StyleChange) return;
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (plot_ && drawn_ != shadeOf(lines_->palette())) draw();
        },
        Qt::QueuedConnection);
}

}  // namespace nettare
