#pragma once

#include "app/widgets/mark.h"
#include "app/widgets/readout.h"

#include <QRectF>

class QFont;
class QPainter;

namespace nettare {

/// Paints the shape into the square `box`, any size from 8 px.
void paintMark(QPainter& painter, Mark mark, const QRectF& box, Shade shade);

/// Diagonal lines over an area: what is missing there was not measured, and is not zero.
void paintHatch(QPainter& painter, const QRectF& area, Shade shade);

/// Side of the square that a mark beside text of this font takes, in px.
[[nodiscard]] double markSidePx(const QFont& font);

/// A mark with its word, as large as the widget's font asks.
class WayMark : public Readout {
    Q_OBJECT

public:
    explicit WayMark(QWidget* parent = nullptr);

    /// `word` replaces the mark's own, such as "series, 6×".
    void setMark(Mark mark, const QString& word = {});

    [[nodiscard]] QString spokenValue() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Mark mark_ = Mark::None;
    QString word_;
};

}  // namespace nettare
