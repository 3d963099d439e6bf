#pragma once

#include "app/widgets/table_delegate.h"

namespace nettare {

class KitchenSession;
class RefusalLine;

/// The one table delegate with the editors of ingredient lines. They hand each keystroke to the
/// draft; nothing waits for the editor to close.
class LineDelegate : public TableDelegate {
    Q_OBJECT

public:
    LineDelegate(KitchenSession& kitchen, RefusalLine& refusal, QObject* parent = nullptr);

    [[nodiscard]] QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const override;
    void setEditorData(QWidget*, const QModelIndex&) const override {}
    void setModelData(QWidget*, QAbstractItemModel*, const QModelIndex&) const override {}

    /// In a tall row the second text stands on a line of its own.
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

    /// Esc leaves the line as it was.
    bool eventFilter(QObject* editor, QEvent* event) override;

    /// Height of the row whose cell that is, in a column of that width.
    [[nodiscard]] static int rowHeightFor(const Cell& cell, int columnWidth, const QFont& font);

private:
    KitchenSession& kitchen_;
    RefusalLine& refusal_;
};

}  // namespace nettare
