#pragma once

#include <QScrollArea>

#include <optional>

#include "app/path/figure_plot.h"
#include "app/theme/palette.h"

namespace nettare {

class PlotCard;

/// The plots of one figure: what each line brings, what makes it unsure, and its interval against
/// ceiling and floor. They follow the palette.
class FigurePlots : public QScrollArea {
    Q_OBJECT

public:
    explicit FigurePlots(QWidget* parent = nullptr);

    void show(FigurePlot plot);

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw();

    PlotCard *lines_, *shares_, *interval_;
    std::optional<FigurePlot> plot_;
    Shade drawn_ = Shade::Light;  ///< the plots are in its colours
};

}  // namespace nettare
