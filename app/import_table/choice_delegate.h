#pragma once

#include "app/widgets/table_delegate.h"

namespace nettare {

/// The one table delegate with a list to choose from, for cells that offer some
/// (ColumnModel::kChoicesRole). A choice is taken at once.
class ChoiceDelegate : public TableDelegate {
    Q_OBJECT

public:
    using TableDelegate::TableDelegate;

    [[nodiscard]] QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
};

}  // namespace nettare
