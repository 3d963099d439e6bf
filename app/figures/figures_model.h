#pragma once

#include <QAbstractTableModel>

#include <memory>
#include <vector>

#include "app/session/evaluation.h"

namespace nettare {

/// Components of one basis: name, amount with its unit, ±. What is incomplete says so under its
/// name.
class FiguresModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Amount, Spread, Columns };

    using QAbstractTableModel::QAbstractTableModel;

    /// Nothing where there are no figures. `dimmed`: they are not of the text as it stands.
    void show(const std::optional<Figures>& figures, bool all, bool dimmed);

    /// True where a part of it is not known.
    [[nodiscard]] bool isPartial(int row) const {
        return !figures_[static_cast<std::size_t>(row)].complete();
    }

    [[nodiscard]] Component componentAt(int row) const {
        return figures_[static_cast<std::size_t>(row)].component;
    }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<Figure> figures_;
    bool dimmed_ = false;
};

}  // namespace nettare
