#pragma once

#include <QAbstractListModel>

#include <vector>

#include "core/ledger/ledger_reading.h"

namespace nettare {

class BenchDesk;

/// The newest readings of the ledger, newest first; older ones come as they are asked for.
class LedgerListModel : public QAbstractListModel {
    Q_OBJECT

public:
    /// The role of a LedgerRow.
    static constexpr int kRowRole = Qt::UserRole;

    explicit LedgerListModel(BenchDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;
    /// Null where there is no such row.
    [[nodiscard]] const LedgerReading* reading(int row) const;
    /// -1 where it has no row.
    [[nodiscard]] int rowOf(const std::string& id) const;

private:
    void follow();

    BenchDesk& desk_;
    std::vector<std::size_t> rows_;  ///< indices of the desk's ledger
};

}  // namespace nettare
