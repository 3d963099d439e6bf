#include "app/path/path_model.h"

#include <algorithm>

#include "app/path/path_texts.h"

namespace nettare {

void PathModel::show(PathStep path) {
    beginResetModel();
    path_ = std::move(path);
    interval_.clear();
    nodes_.clear();
    add(path_, -1, 0);
    endResetModel();
}

void PathModel::clear() {
    beginResetModel();
    nodes_.clear();
    path_ = {};
    endResetModel();
}

int PathModel::add(const PathStep& step, int parent, int row) {
    const std::size_t place = nodes_.size();
    nodes_.push_back({&step, parent, row, {}});
    std::vector<int> below;
    for (const PathStep& each : step.below)
        below.push_back(add(each, static_cast<int>(place), static_cast<int>(below.size())));
    nodes_[place].below = std::move(below);
    return static_cast<int>(place);
}

void PathModel::setInterval(const QString& interval) {
    if (interval == interval_ || nodes_.empty()) return;
    interval_ = interval;
    const QModelIndex first = index(0, 0);
    emit dataChanged(first, first);
}

const PathStep& PathModel::step(const QModelIndex& index) const {
    return *node(index).step;
}

QString PathModel::intervalOf(const QModelIndex& index) const {
    return node(index).parent < 0 ? interval_ : QString{};
}

QModelIndex PathModel::at(const std::vector<int>& rows) const {
    QModelIndex found;
    for (const int row : rows) {
        found = index(row, 0, found);
        if (!found.isValid()) return {};
    }
    return found;
}

std::vector<int> PathModel::rowsTo(QModelIndex index) {
    std::vector<int> rows;
    for (; index.isValid(); index = index.parent()) rows.push_back(index.row());
    std::ranges::reverse(rows);
    return rows;
}

QModelIndex PathModel::index(int row, int column, const QModelIndex& parent) const {
    if (row < 0 || row >= rowCount(parent) || column != 0) return {};
    const int place = parent.isValid() ? node(parent).below[static_cast<std::size_t>(row)] : 0;
    return createIndex(row, 0, static_cast<quintptr>(place));
}

QModelIndex PathModel::parent(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    const int above = node(index).parent;
    if (above < 0) return {};
    return createIndex(nodes_[static_cast<std::size_t>(above)].row, 0,
                       static_cast<quintptr>(above));
}

int PathModel::rowCount(const QModelIndex& parent) const {
    if (!parent.isValid()) return nodes_.empty() ? 0 : 1;
    return static_cast<int>(node(parent).below.size());
}

int PathModel::columnCount(const QModelIndex&) const {
    return 1;
}

QVariant PathModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return spokenStep(step(index), intervalOf(index));
    return {};
}

}  // namespace nettare
