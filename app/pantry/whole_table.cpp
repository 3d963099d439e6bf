#include "app/pantry/whole_table.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QWheelEvent>

#include <algorithm>

#include "app/theme/spacing.h"
#include "app/widgets/table_delegate.h"

namespace nettare {

WholeTable::WholeTable(int wideColumn, QWidget* parent)
    : QTableView{parent}, wideColumn_{wideColumn} {
    dressTable(*this);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void WholeTable::fit() {
    QHeaderView* const header = horizontalHeader();
    for (int column = 0; column < header->count(); ++column) {
        const bool wide = column == wideColumn_;
        header->setSectionResizeMode(column, wide ? QHeaderView::Stretch : QHeaderView::Fixed);
        if (!wide) resizeColumnToContents(column);
    }
    const int rows = model()->rowCount() * verticalHeader()->defaultSectionSize();
    setFixedHeight(std::max(header->sizeHint().height(), header->minimumHeight()) + rows);
}

void WholeTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    for (QWidget* above = parentWidget(); above != nullptr; above = above->parentWidget()) {
        auto* const page = qobject_cast<QScrollArea*>(above);
        if (page == nullptr || page->widget() == nullptr || !current.isValid()) continue;
        const QRect cell = visualRect(current);
        const QPoint middle = viewport()->mapTo(page->widget(), cell.center());
        page->ensureVisible(page->widget()->width() / 2, middle.y(), 0, cell.height() + kSpace4Px);
        return;
    }
}

void WholeTable::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

}  // namespace nettare
