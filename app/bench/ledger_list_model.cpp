#include "app/bench/ledger_list_model.h"

#include <algorithm>

#include "app/bench/bench_desk.h"
#include "app/bench/ledger_row.h"
#include "app/widgets/plain_tip.h"

namespace nettare {

LedgerListModel::LedgerListModel(BenchDesk& desk, QObject* parent)
    : QAbstractListModel{parent}, desk_{desk} {
    connect(&desk_, &BenchDesk::ledgerChanged, this, &LedgerListModel::follow);
    follow();
}

void LedgerListModel::follow() {
    beginResetModel();
    rows_.clear();
    for (std::size_t i = 0; i < desk_.ledger().size(); ++i)
        if (hasRow(desk_.ledger()[i])) rows_.push_back(i);
    endResetModel();
}

int LedgerListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

const LedgerReading* LedgerListModel::reading(int row) const {
    if (row < 0 || static_cast<std::size_t>(row) >= rows_.size()) return nullptr;
    const std::size_t at = rows_[static_cast<std::size_t>(row)];
    // The desk changes before it says so.
    return at < desk_.ledger().size() ? &desk_.ledger()[at] : nullptr;
}

int LedgerListModel::rowOf(const std::string& id) const {
    const auto found = std::ranges::find_if(
        rows_, [&](std::size_t at) { return desk_.ledger()[at].entry().id == id; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

QVariant LedgerListModel::data(const QModelIndex& index, int role) const {
    const LedgerReading* const shown = reading(index.row());
    if (shown == nullptr) return {};
    if (role == kRowRole) return QVariant::fromValue(ledgerRowOf(*shown));
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return spokenRow(ledgerRowOf(*shown));
    if (role == Qt::ToolTipRole) return plainTip(spokenRow(ledgerRowOf(*shown)));
    return {};
}

bool LedgerListModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && desk_.hasOlder();
}

void LedgerListModel::fetchMore(const QModelIndex&) {
    desk_.readOlder();
}

}  // namespace nettare
