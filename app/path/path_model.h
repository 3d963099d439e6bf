#pragma once

#include <QAbstractItemModel>

#include <vector>

#include "core/publish/path.h"

namespace nettare {

/// The steps of a path as a tree of one column; the delegate reads them by step().
class PathModel : public QAbstractItemModel {
    Q_OBJECT

public:
    using QAbstractItemModel::QAbstractItemModel;

    void show(PathStep path);
    void clear();
    /// Shown in place of the half-width of the figure itself; empty: its half-width.
    void setInterval(const QString& interval);

    [[nodiscard]] const PathStep& step(const QModelIndex& index) const;
    /// What stands in place of the ± of that step; empty for all but the first.
    [[nodiscard]] QString intervalOf(const QModelIndex& index) const;
    /// Steps in all.
    [[nodiscard]] int size() const { return static_cast<int>(nodes_.size()); }
    /// The step that the rows lead to from the top; invalid where there is none.
    [[nodiscard]] QModelIndex at(const std::vector<int>& rows) const;
    /// The rows that lead to a step.
    [[nodiscard]] static std::vector<int> rowsTo(QModelIndex index);

    [[nodiscard]] QModelIndex index(int row, int column,
                                    const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Node {
        const PathStep* step;
        int parent;  ///< -1 for the first
        int row;
        std::vector<int> below;
    };
    int add(const PathStep& step, int parent, int row);
    [[nodiscard]] const Node& node(const QModelIndex& index) const {
        return nodes_[static_cast<std::size_t>(index.internalId())];
    }

    PathStep path_;
    QString interval_;
    std::vector<Node> nodes_;
};

}  // namespace nettare
