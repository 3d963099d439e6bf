#include "app/gui/support/cut_texts.h"

#include <QAbstractButton>
#include <QHeaderView>
#include <QLabel>

#include <vector>

namespace nettare {

namespace {

bool fits(const QLabel& label) {
    if (!label.wordWrap()) return label.width() >= label.minimumSizeHint().width();
    return label.height() >= label.heightForWidth(label.width());
}

bool fits(const QAbstractButton& button) {
    return button.width() >= button.sizeHint().width() &&
           button.height() >= button.sizeHint().height();
}

void addCutHeaders(const QHeaderView& header, QStringList& cut) {
    if (header.orientation() != Qt::Horizontal) return;
    for (int i = 0; i < header.count(); ++i) {
        const int needed = header.sectionSizeHint(i);
        if (!header.isSectionHidden(i) && header.sectionSize(i) < needed)
            cut << header.model()->headerData(i, Qt::Horizontal).toString();
    }
}

}  // namespace

QStringList cutTexts(const QWidget& root) {
    QStringList cut;
    std::vector<std::pair<QRect, QString>> places;
    const auto take = [&](const QWidget& widget, const QString& text, bool whole) {
        if (!widget.isVisible() || text.isEmpty()) return;
        if (!whole) cut << text;
        // What a scroll area hides lies over nothing.
        const QRect place =
            widget.visibleRegion().boundingRect().translated(widget.mapTo(&root, QPoint{0, 0}));
        if (place.isEmpty()) return;
        for (const auto& [other, otherText] : places)
            if (place.intersects(other)) cut << text + QStringLiteral(" lies over ") + otherText;
        places.emplace_back(place, text);
    };
    for (const QLabel* label : root.findChildren<QLabel*>())
        take(*label, label->text(), fits(*label));
    for (const QAbstractButton* button : root.findChildren<QAbstractButton*>())
        take(*button, button->text(), fits(*button));
    for (const QHeaderView* header : root.findChildren<QHeaderView*>())
        if (header->isVisible()) addCutHeaders(*header, cut);
    return cut;
}

}  // namespace nettare
