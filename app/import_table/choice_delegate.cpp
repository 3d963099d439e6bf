#include "app/import_table/choice_delegate.h"

#include <QComboBox>

#include "app/import_table/column_model.h"

namespace nettare {

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                      const QModelIndex& index) const {
    auto* list = new QComboBox{parent};
    list->addItems(index.data(ColumnModel::kChoicesRole).toStringList());
    list->setMaxVisibleItems(16);
    connect(list, &QComboBox::activated, this, [this, list] {
        auto* self = const_cast<ChoiceDelegate*>(this);
        emit self->commitData(list);
        emit self->closeEditor(list);
    });
    return list;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* list = static_cast<QComboBox*>(editor);
    list->setCurrentText(index.data(Qt::EditRole).toString());
    if (list->view() != nullptr) list->showPopup();
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
    model->setData(index, static_cast<QComboBox*>(editor)->currentText(), Qt::EditRole);
}

}  // namespace nettare
