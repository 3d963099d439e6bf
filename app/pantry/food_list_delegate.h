#pragma once

#include <QStyledItemDelegate>

namespace nettare {

/// Paints a food as two lines, its name and where it is from, with its energy and how much of it is
/// known at the right; headings and groups between them.
class FoodListDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

    /// Widths of the two columns at the right, with the room that parts them; px.
    [[nodiscard]] static int energyWidthPx();
    [[nodiscard]] static int knownWidthPx();
};

}  // namespace nettare
