#pragma once

#include "app/compare/compared_row.h"
#include "app/widgets/cell.h"

#include <QAbstractTableModel>

#include <vector>

namespace nettare {

/// The lines of two states side by side, the earlier one left, and what changed between them. Equal
/// rows are dimmed; changed cells carry a mark, and a screen reader hears what they were.
class CompareModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        LeftAmount,
        LeftFood,
        LeftGrams,
        LeftEnergy,
        RightAmount,
        RightFood,
        RightGrams,
        RightEnergy,
        GramsChange,
        EnergyChange,
        ColumnCount,
    };
    static constexpr int kSideColumns = RightAmount;

    using QAbstractTableModel::QAbstractTableModel;

    /// The rows in their order, the batch's total last.
    void show(std::vector<ComparedRow> rows);
    /// Leaves the equal rows out; the total stays.
    void setChangesOnly(bool changesOnly);
    [[nodiscard]] bool anyChange() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    void choose();

    std::vector<ComparedRow> rows_;
    std::vector<std::size_t> shown_;
    bool changesOnly_ = false;
};

}  // namespace nettare
