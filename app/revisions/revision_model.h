#pragma once

#include "app/widgets/cell.h"

#include <QAbstractTableModel>

#include <map>
#include <vector>

#include "db/kitchen/kitchen.h"

namespace nettare {

/// What a revision's figures say in the list; they never change, so each is asked for once.
struct RevisionFigures {
    Cell energy;
    QString ceiling;  ///< "met"; "—" for a recipe without one
};

/// The revisions of a recipe, newest first.
class RevisionModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, Note, Kept, From, EnergyColumn, Ceiling, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    /// `recipe` tells whether figures that are known stay.
    void show(const QString& recipe, const std::vector<RevisionSummary>& revisions);
    void setFigures(int number, RevisionFigures figures);
    [[nodiscard]] bool knows(int number) const { return figures_.contains(number); }
    [[nodiscard]] const RevisionSummary& at(int row) const {
        return revisions_[static_cast<std::size_t>(row)];
    }
    /// -1 where there is none.
    [[nodiscard]] int rowOf(int number) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] Cell cellOf(const RevisionSummary& revision, int column) const;

    QString recipe_;
    std::vector<RevisionSummary> revisions_;
    std::map<int, RevisionFigures> figures_;
};

}  // namespace nettare
