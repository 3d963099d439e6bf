#pragma once

#include <QStyledItemDelegate>

namespace nettare {

/// Paints the shelf: headings in capitals, titles that wrap, the revision at the right. The
/// selected recipe has the cobalt rim at its left, and a ring while the shelf has the focus.
class ShelfDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

}  // namespace nettare
