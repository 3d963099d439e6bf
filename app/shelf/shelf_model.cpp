#include "app/shelf/shelf_model.h"

#include <algorithm>

namespace nettare {

ShelfModel::Row ShelfModel::rowOf(const ShelvedRecipe& recipe) {
    Row row{QString::fromStdString(recipe.id), QString::fromStdString(recipe.title), {}, {}};
    row.spoken = row.text;
    if (recipe.revisions > 0) {
        row.revision = tr("r%1").arg(recipe.revisions);
        row.spoken = tr("%1, revision %2").arg(row.text).arg(recipe.revisions);
    }
    return row;
}

void ShelfModel::show(const std::vector<ShelvedRecipe>& recipes) {
    std::vector<Row> rows;
    rows.reserve(recipes.size() + 2);
    for (const bool inWork : {true, false}) {
        const auto ofGroup = [inWork](const ShelvedRecipe& r) { return r.inWork == inWork; };
        if (std::ranges::none_of(recipes, ofGroup)) continue;
        const QString heading = inWork ? tr("In work") : tr("Proven");
        rows.push_back({{}, heading, {}, heading});
        for (const ShelvedRecipe& recipe : recipes)
            if (ofGroup(recipe)) rows.push_back(rowOf(recipe));
    }
    // The shelf is read again after every edit; mostly nothing in it has changed.
    if (rows == rows_) return;
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

QModelIndex ShelfModel::indexOfRecipe(const QString& id) const {
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!id.isEmpty() && rows_[i].id == id) return index(static_cast<int>(i));
    return {};
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole:
            return row.text;
        case Qt::AccessibleTextRole:
            return row.spoken;
        case RecipeRole:
            return row.id;
        case RevisionRole:
            return row.revision;
        default:
            return {};
    }
}

Qt::ItemFlags ShelfModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || rows_[static_cast<std::size_t>(index.row())].id.isEmpty())
        return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

}  // namespace nettare
