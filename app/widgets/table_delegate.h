#pragma once

#include "app/widgets/cell_painter.h"

#include <QStyledItemDelegate>

class QTableView;

namespace nettare {

/// Paints the cells of every table (app/widgets/cell.h). Where a model gives no Cell, its text
/// is shown as one.
class TableDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit TableDelegate(QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

    /// Where paint() puts the cell.
    [[nodiscard]] CellPlace placeOf(const QStyleOptionViewItem& option,
                                    const QModelIndex& index) const;

private:
    NumberColumns* columns_;
};

/// Height of a row with text of this font, in px: 32, or more for large text.
[[nodiscard]] int rowHeightPx(const QFont& font);

/// Dresses a table as all tables are: this delegate, a quiet header, whole rows selected, no grid;
/// the Tab key leaves it. A model says in headerData, by Qt::TextAlignmentRole, which columns are
/// numbers.
void dressTable(QTableView& table);

}  // namespace nettare
