#include "app/path/wrapped_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <cmath>

namespace nettare {

namespace {

constexpr double kLeading = 1.3;  // of the size

}  // namespace

QStringList wrappedLines(const QString& text, const QFont& font, double width) {
    QStringList lines;
    for (const QString& paragraph : text.split(u'\n')) {
        QTextLayout layout{paragraph, font};
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(std::max(1.0, width));
            lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines;
}

double drawLines(QPainter& painter, const QStringList& lines, const QFont& font, QPointF at) {
    painter.setFont(font);
    for (const QString& line : lines) {
        painter.drawText(at, line);
        at.ry() += lineStep(font);
    }
    return at.y();
}

double lineStep(const QFont& font) {
    return std::round(font.pixelSize() * kLeading);
}

}  // namespace nettare
