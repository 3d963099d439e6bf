#pragma once

#include <QAbstractListModel>

#include <vector>

#include "db/kitchen/kitchen.h"

namespace nettare {

/// The recipes of a kitchen under the headings "In work" and "Proven". Headings take no selection.
class ShelfModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        RecipeRole = Qt::UserRole,  ///< id; empty for a heading
        RevisionRole,               ///< "r3"; empty where none was kept
    };

    using QAbstractListModel::QAbstractListModel;

    void show(const std::vector<ShelvedRecipe>& recipes);
    /// The row of a recipe; invalid where the shelf does not show it.
    [[nodiscard]] QModelIndex indexOfRecipe(const QString& id) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row {
        QString id, text, revision, spoken;
        friend bool operator==(const Row&, const Row&) = default;
    };
    [[nodiscard]] static Row rowOf(const ShelvedRecipe& recipe);
    std::vector<Row> rows_;
};

}  // namespace nettare
