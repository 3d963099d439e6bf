#pragma once

#include <QAbstractTableModel>

#include <vector>

#include "app/import_table/column_roles.h"

namespace nettare {

/// The columns of a CSV, one a row: header, first values, what it is taken for, unit.
class ColumnModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Header, First, Use, Unit, Count };
    /// What the editor of a cell offers, a QStringList.
    static constexpr int kChoicesRole = Qt::UserRole + 7;

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<ColumnRole> roles);
    [[nodiscard]] const std::vector<ColumnRole>& roles() const { return roles_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// One of the texts of kChoicesRole.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

signals:
    void rolesChanged();

private:
    [[nodiscard]] QStringList choices(const QModelIndex& index) const;

    std::vector<ColumnRole> roles_;
};

}  // namespace nettare
