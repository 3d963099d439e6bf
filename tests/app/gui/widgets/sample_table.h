#pragma once

#include "app/widgets/cell.h"

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace nettare {

/// A table of given cells; columns of numbers are those that hold one in the first row.
class SampleTable : public QAbstractTableModel {
    Q_OBJECT

public:
    SampleTable(QStringList headers, std::vector<std::vector<Cell>> rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    void put(int row, int column, const Cell& cell);

private:
    QStringList headers_;
    std::vector<std::vector<Cell>> rows_;
};

/// Skewers: every kind of cell, changes and a problem among them.
[[nodiscard]] SampleTable* skewerTable();

}  // namespace nettare
