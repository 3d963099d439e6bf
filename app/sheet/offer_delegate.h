#pragma once

#include <QStyledItemDelegate>

namespace nettare {

/// Rows of a list that opens under a field: as tall as a menu's, the current one filled. The view
/// must outlive the delegate.
class OfferDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;
};

}  // namespace nettare
