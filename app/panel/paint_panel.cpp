#include "app/panel/paint_panel.h"

#include "app/panel/panel_fonts.h"

#include <QFont>
#include <QPainter>
#include <QString>

namespace nettare {

void paintPanel(QPainter& painter, const PanelLayout& layout) {
    painter.save();
    // On a screen a hairline is thinner than a pixel and would vanish.
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.fillRect(0, 0, layout.widthCpt, layout.heightCpt, Qt::white);
    // Filled, not stroked: a pen's cap would lengthen a rule by its thickness.
    for (const PanelRule& rule : layout.rules)
        painter.fillRect(rule.leftCpt, rule.topCpt, rule.widthCpt, rule.heightCpt, Qt::black);
    painter.setPen(Qt::black);
    for (const PanelText& text : layout.texts) {
        painter.setFont(panelFont(text.style));
        painter.drawText(text.leftCpt, text.baselineCpt, QString::fromStdString(text.text));
    }
    painter.restore();
}

}  // namespace nettare
