#include "app/bench/series_plot_view.h"

#include <QEvent>
#include <QVBoxLayout>

#include "app/bench/series_chart.h"
#include "app/path/quiet_plot.h"

namespace nettare {

SeriesPlotView::SeriesPlotView(QWidget* parent)
    : FocusGroup{tr("Plot of the series"), parent}, chart_{new QuietPlot{tr("Series")}} {
    auto* const column = new QVBoxLayout{this};
    const int ring = ringRoomPx();
    column->setContentsMargins(ring, ring, ring, ring);
    column->addWidget(chart_);
}

void SeriesPlotView::show(const SeriesPlot& plot) {
    plot_ = plot;
    draw();
}

void SeriesPlotView::draw() {
    const QString spoken = spokenPlot(plot_);
    setFixedHeight(seriesChartHeight(plot_) + 2 * ringRoomPx());
    setSpoken(spoken);
    chart_->show(seriesChart(plot_, shadeOf(palette())), spoken);
}

void SeriesPlotView::changeEvent(QEvent* event) {
    FocusGroup::changeEvent(event);
    // Its colours were taken from the palette when it was drawn.
    if (event->type() == QEvent::PaletteChange && !plot_.dots.empty()) draw();
}

}  // namespace nettare
