#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

#include "app/widgets/cell.h"

namespace nettare {

/// A table of cells that are known beforehand.
class CellsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using Row = std::vector<Cell>;

    /// `numbers` are the columns of numbers.
    CellsModel(QStringList headers, std::vector<int> numbers, QObject* parent = nullptr);

    /// Every row has a cell for each header.
    void show(std::vector<Row> rows);
    /// The same with other headers, as many numbers as before from the second column on.
    void show(QStringList headers, std::vector<int> numbers, std::vector<Row> rows);
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QStringList headers_;
    std::vector<int> numbers_;
    std::vector<Row> rows_;
};

}  // namespace nettare
