#pragma once

#include "app/widgets/cell.h"
#include "app/widgets/number_column.h"

#include <QFont>
#include <QRect>

class QPainter;

namespace nettare {

/// Where and how one cell is painted.
struct CellPlace {
    QRect rect;
    QFont font;  ///< of the view
    Shade shade = Shade::Light;
    NumberWidths widths;  ///< of the cell's column
    bool selected = false;
    bool focused = false;
    bool firstColumn = false;  ///< takes the rim of the selected row
    bool atRight = false;      ///< a column of numbers
    double pixelRatio = 1.0;
};

/// Ground, content, marks, outlines.
void paintCell(QPainter& painter, const Cell& cell, const CellPlace& place);

/// Where the decimal mark of a number in this place begins, or would; whole px.
[[nodiscard]] int decimalMarkX(const CellPlace& place);

/// Width that the cell asks for, in px.
[[nodiscard]] int cellWidthPx(const Cell& cell, const CellPlace& place);

}  // namespace nettare
