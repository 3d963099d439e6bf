#pragma once

#include "app/compare/focus_group.h"
#include "app/theme/palette.h"

#include <QtCharts/QChart>

class QLabel;

namespace nettare {

class QuietPlot;

/// A plot on a card with its heading, in the colours of the palette, still and without a legend.
/// What it shows is said in words too.
class PlotCard : public FocusGroup {
    Q_OBJECT

public:
    explicit PlotCard(const QString& heading, QWidget* parent = nullptr);

    /// Takes the chart over. `spoken` says what it shows; `note` stands below it, empty for none.
    void show(QChart* chart, const QString& spoken, const QString& note = {});

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QuietPlot* plot_;
    QLabel* note_;
};

/// A chart dressed for a card: no ground, no legend, no movement.
[[nodiscard]] QChart* quietChart();

/// Ink, lines and type of an axis.
void dressAxis(QAbstractAxis& axis, Shade shade, bool grid);

}  // namespace nettare
