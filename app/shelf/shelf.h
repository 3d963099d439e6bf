#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>

#include "app/shelf/shelf_model.h"
#include "app/window/pane.h"

namespace nettare {

class KitchenSession;

/// The recipes of the kitchen, with a field to find some. Enter or a click opens one.
class Shelf : public Pane {
    Q_OBJECT

public:
    explicit Shelf(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Puts the focus into the field.
    void find();
    [[nodiscard]] bool isSearching() const { return !words_->text().trimmed().isEmpty(); }
    /// The topmost recipe's id; empty where none is shown.
    [[nodiscard]] QString firstRecipe() const;

signals:
    void newRecipeAsked();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void follow();
    void open(const QModelIndex& index);
    void markOpenRecipe();
    void buildEmpty();

    KitchenSession& kitchen_;
    QLineEdit* words_;
    ShelfModel* model_;
    QListView* list_;
    QWidget* empty_;
    QLabel* emptyText_;
    QPushButton* newRecipe_;
    QPushButton* showAll_;
};

}  // namespace nettare
