#pragma once

#include <QAbstractTableModel>

#include <vector>

#include "app/which_row/row_options.h"

namespace nettare {

/// Rows that a cook could mean, each with what is in 100 g of it and what the recipe comes to.
class RowModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Treatment, Per100g, Energy, Fat, Carbohydrate, Protein, Sodium, Count };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<RowOption> options);
    /// Nothing where there is no such row.
    [[nodiscard]] const RowOption* at(int row) const;
    [[nodiscard]] int currentRow() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    std::vector<RowOption> options_;
};

}  // namespace nettare
