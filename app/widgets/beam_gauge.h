#pragma once

#include "app/widgets/readout.h"

#include <QString>

#include <optional>

namespace nettare {

/// What the gauge shows. Numbers place its strokes; texts are what is read, in the user's language.
struct BeamFigure {
    std::optional<double> value;           ///< none: no data
    std::optional<double> low, high;       ///< interval; high missing: at least, open upwards
    std::optional<double> floor, ceiling;  ///< targets
    std::optional<double> safe;            ///< the value up to which its interval keeps the ceiling
    QString valueText;                     ///< "144"
    QString plusMinusText;                 ///< "5"; empty: not said
    QString unit;                          ///< "kcal", or a word for screen readers
    QString floorText, ceilingText;        ///< "150"
    QString safeText;                      ///< "A portion of up to 1 skewer is safe."
};

/// A ruled line from 0: the figure's interval as a block on it, the figure as a stroke, the ceiling
/// as a stop with its number above, the floor with its number below; a notch below the line where a
/// smaller portion would be safe.
class BeamGauge : public Readout {
    Q_OBJECT

public:
    explicit BeamGauge(QWidget* parent = nullptr);

    void setFigure(const BeamFigure& figure);

    /// "144 kcal, plus or minus 5, ceiling 150"; "no data, ceiling 150".
    [[nodiscard]] QString spokenValue() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

    /// Where a value stands, in px from the left of the widget.
    [[nodiscard]] double positionOf(double value) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintScale(QPainter& painter, double line) const;
    void paintFigure(QPainter& painter, double line) const;
    void paintSafe(QPainter& painter, double line) const;
    void paintStop(QPainter& painter, double line, double at, const QString& number,
                   bool above) const;

    BeamFigure figure_;
    double step_ = 1.0;  ///< between ticks
    double end_ = 4.0;   ///< of the scale
};

/// Distance of ticks, 1, 2 or 5 times a power of ten, so that four to ten reach up to `most`.
[[nodiscard]] double tickStep(double most);

}  // namespace nettare
