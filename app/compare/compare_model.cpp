#include "app/compare/compare_model.h"

#include "app/compare/compare_cells.h"
#include "app/widgets/plain_tip.h"

#include <algorithm>

namespace nettare {

namespace {

bool isNumberColumn(int column) {
    switch (column) {
        case CompareModel::LeftAmount:
        case CompareModel::LeftFood:
        case CompareModel::RightAmount:
        case CompareModel::RightFood:
            return false;
        default:
            return true;
    }
}

}  // namespace

void CompareModel::show(std::vector<ComparedRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    choose();
    endResetModel();
}

void CompareModel::setChangesOnly(bool changesOnly) {
    beginResetModel();
    changesOnly_ = changesOnly;
    choose();
    endResetModel();
}

bool CompareModel::anyChange() const {
    return std::any_of(rows_.begin(), rows_.end(), [](const ComparedRow& row) {
        return row.differs() && row.kind != RowKind::Total;
    });
}

void CompareModel::choose() {
    shown_.clear();
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!changesOnly_ || rows_[i].differs()) shown_.push_back(i);
}

int CompareModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int CompareModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant CompareModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const ComparedRow& row = rows_[shown_[static_cast<std::size_t>(index.row())]];
    Cell cell = compareCell(row, index.column());
    if (role == kCellRole) cell.was.clear();
    if (role == Qt::ToolTipRole && index.column() % kSideColumns == LeftFood)
        return plainTip(plainText(cell));
    return cellData(cell, role);
}

QVariant CompareModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{(isNumberColumn(section) ? Qt::AlignRight : Qt::AlignLeft) |
                        Qt::AlignVCenter};
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    const bool spoken = role == Qt::AccessibleTextRole;
    switch (section) {
        case LeftAmount:
            return spoken ? tr("Amount on the left") : tr("Amount");
        case LeftFood:
            return spoken ? tr("Food on the left") : tr("Food");
        case LeftGrams:
            return spoken ? tr("Grams on the left") : tr("g");
        case LeftEnergy:
            return spoken ? tr("Kilocalories on the left") : tr("kcal");
        case RightAmount:
            return spoken ? tr("Amount on the right") : tr("Amount");
        case RightFood:
            return spoken ? tr("Food on the right") : tr("Food");
        case RightGrams:
            return spoken ? tr("Grams on the right") : tr("g");
        case RightEnergy:
            return spoken ? tr("Kilocalories on the right") : tr("kcal");
        case GramsChange:
            return spoken ? tr("Change in grams") : tr("change, g");
        case EnergyChange:
            return spoken ? tr("Change in kilocalories") : tr("change, kcal");
        default:
            return {};
    }
}

}  // namespace nettare
