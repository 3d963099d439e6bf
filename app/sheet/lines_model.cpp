#include "app/sheet/lines_model.h"

#include <algorithm>

#include "app/theme/type.h"
#include "app/widgets/plain_tip.h"

namespace nettare {

namespace {

bool isNumber(int column) {
    const auto which = static_cast<LineColumn>(column);
    return which == LineColumn::Grams || which == LineColumn::Spread || which == LineColumn::Energy;
}

bool isTyped(int column) {
    return column <= static_cast<int>(LineColumn::Ingredient);
}

bool looksTheSame(const LineRow& a, const LineRow& b) {
    return std::ranges::equal(a.cells, b.cells) && a.preparation == b.preparation;
}

}  // namespace

void LinesModel::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &LinesModel::follow);
    beginResetModel();
    rows_ = draft == nullptr ? std::vector<LineRow>{} : lineRows(*draft);
    endResetModel();
}

// While the lines are the same ones, only what changed is told, so that an open editor stays.
void LinesModel::follow() {
    std::vector<LineRow> rows = lineRows(*draft_);
    if (!std::ranges::equal(rows, rows_, {}, &LineRow::id, &LineRow::id)) {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
        return;
    }
    rows_.swap(rows);
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!looksTheSame(rows_[i], rows[i]))
            emit dataChanged(index(static_cast<int>(i), 0),
                             index(static_cast<int>(i), kLineColumns - 1));
}

int LinesModel::rowOf(const std::string& line) const {
    const auto found = std::ranges::find(rows_, line, &LineRow::id);
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

int LinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int LinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kLineColumns;
}

QVariant LinesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const LineRow& line = row(index.row());
    if (role == Qt::EditRole)
        return index.column() == static_cast<int>(LineColumn::Amount) ? line.amount : line.food;
    const Cell& cell = line.cells[index.column()];
    // The whole of what a narrow column may cut.
    if (role == Qt::ToolTipRole && cell.problem.isEmpty() && !cell.muted.isEmpty())
        return plainTip(plainText(cell));
    return cellData(cell, role);
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= kLineColumns) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{isNumber(section) ? Qt::AlignRight | Qt::AlignVCenter
                                          : Qt::AlignLeft | Qt::AlignVCenter};
    if (role == Qt::FontRole) return typeFont(TypeSize::Header);
    const bool margin = static_cast<LineColumn>(section) == LineColumn::Margin;
    if (margin && (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole))
        return tr("Findings");
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<LineColumn>(section)) {
        case LineColumn::Amount:
            return tr("Amount");
        case LineColumn::Ingredient:
            return tr("Ingredient");
        case LineColumn::Grams:
            return tr("Grams");
        case LineColumn::Spread:
            return tr("±");
        case LineColumn::Way:
            return tr("Grams from");
        case LineColumn::Energy:
            return tr("kcal");
        case LineColumn::Share:
            return tr("Share");
        case LineColumn::Margin:
            break;
    }
    return {};
}

Qt::ItemFlags LinesModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (isTyped(index.column()) && draft_ != nullptr && !draft_->readOnly())
        flags |= Qt::ItemIsEditable;
    return flags;
}

}  // namespace nettare
