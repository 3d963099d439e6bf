#include "app/paper/paper_block.h"

#include <QFontMetricsF>
#include <QPainter>

#include "app/panel/panel_fonts.h"
#include "app/path/wrapped_text.h"

namespace nettare {

QFont paperFont(int sizeCpt) {
    return panelFont({PanelFace::Regular, sizeCpt, true});
}

QFont boldPaperFont(int sizeCpt) {
    return panelFont({PanelFace::Bold, sizeCpt, true});
}

double wideOnPaper(const QFont& font, const QString& text) {
    return QFontMetricsF{font}.horizontalAdvance(text);
}

PaperBlock textBlock(const QString& text, const QFont& font, const QColor& ink, double widthCpt,
                     double airCpt) {
    const QStringList lines = wrappedLines(text, font, widthCpt);
    return {static_cast<double>(lines.size()) * lineStep(font) + airCpt,
            [=](QPainter& painter, double top) {
                painter.setPen(ink);
                drawLines(painter, lines, font, {0, top + QFontMetricsF{font}.ascent()});
            }};
}

void paperHairline(QPainter& painter, double left, double top, double widthCpt) {
    constexpr double kHairCpt = 25;
    painter.fillRect(QRectF{left, top, widthCpt, kHairCpt}, QColor{0xBB, 0xBB, 0xBB});
}

}  // namespace nettare
