#pragma once

#include "app/bench/series_plot.h"
#include "app/compare/focus_group.h"

namespace nettare {

class QuietPlot;

/// The plot of a series in the colours of the palette; said in words to screen readers.
class SeriesPlotView : public FocusGroup {
    Q_OBJECT

public:
    explicit SeriesPlotView(QWidget* parent = nullptr);

    void show(const SeriesPlot& plot);
    [[nodiscard]] const SeriesPlot& plot() const { return plot_; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw();

    QuietPlot* chart_;
    SeriesPlot plot_;
};

}  // namespace nettare
