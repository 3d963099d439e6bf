#include "app/pantry/cells_model.h"

#include <algorithm>

#include "app/widgets/plain_tip.h"

namespace nettare {

CellsModel::CellsModel(QStringList headers, std::vector<int> numbers, QObject* parent)
    : QAbstractTableModel{parent}, headers_{std::move(headers)}, numbers_{std::move(numbers)} {}

void CellsModel::show(std::vector<Row> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

void CellsModel::show(QStringList headers, std::vector<int> numbers, std::vector<Row> rows) {
    beginResetModel();
    headers_ = std::move(headers);
    numbers_ = std::move(numbers);
    rows_ = std::move(rows);
    endResetModel();
}

int CellsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int CellsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(headers_.size());
}

QVariant CellsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Cell& cell =
        rows_[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    // Words may be longer than their column.
    if (role == Qt::ToolTipRole && cell.kind == CellKind::Text) return plainTip(plainText(cell));
    return cellData(cell, role);
}

QVariant CellsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= headers_.size()) return {};
    if (role == Qt::DisplayRole) return headers_[section];
    if (role != Qt::TextAlignmentRole) return {};
    const bool number = std::ranges::find(numbers_, section) != numbers_.end();
    return QVariant{(number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
}

}  // namespace nettare
