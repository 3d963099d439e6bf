#pragma once

#include <QAbstractTableModel>

#include "app/trial/trial.h"

namespace nettare {

/// The figures of a trial: as they are, tried, and the difference with what can be said of it.
class TrialFiguresModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Now, Tried, Difference, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(const PerComponent<FigureDifference>& differences);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    std::vector<FigureDifference> rows_;
};

}  // namespace nettare
