#pragma once

#include <QStyledItemDelegate>

namespace nettare {

/// Paints a row of the ledger in text that is read at a metre: in one line where it is wide, else
/// in two or three.
class LedgerRowDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

}  // namespace nettare
