#include "app/gui/pantry/pantry_window.h"

#include "app/gui/support/gui.h"
#include "app/pantry/food_list_model.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTableView>

namespace nettare {

PantryWindow::PantryWindow() {
    demo_.window().showScreen(QStringLiteral("pantry"));
    rest();
}

void PantryWindow::search(const QString& words) {
    auto& field = child<QLineEdit>(screen(), "foodSearch");
    field.setFocus();
    field.selectAll();
    if (words.isEmpty())
        field.clear();
    else
        typeText(field, words);
    settle();
}

QStringList PantryWindow::listed() {
    const auto* model = child<QListView>(screen(), "foods").model();
    QStringList rows;
    for (int i = 0; i < model->rowCount(); ++i) {
        const QModelIndex index = model->index(i, 0);
        rows += index.data(Qt::DisplayRole).toString() + QStringLiteral(" | ") +
                index.data(FoodListModel::NoteRole).toString();
    }
    return rows;
}

QString PantryWindow::shown() {
    return child<QLabel>(screen(), "foodName").text();
}

void PantryWindow::rest() {
    kitchen().settle();
    settle();
    kitchen().settle();
    settle();
}

TableRow PantryWindow::addOwn(const QString& name, double energyKcal) {
    OwnFood own;
    own.food.row.table = kOwnTable;
    own.food.name = name.toStdString();
    own.food.profile.per100g[indexOf(Component::ENERC_KCAL)] = energyKcal;
    own.food.addedSugars = {AddedSugarKind::None, 0, "plain single food"};
    own.origin.source = "miller's analysis, lot 12";
    own.origin.date = "2026-05-16";
    TableRow saved;
    kitchen().ownFoods().save(own, &kitchen(), [&saved](const TableRow& row) { saved = row; });
    rest();
    REQUIRE(saved.number.size() == 36);
    return saved;
}

QString PantryWindow::cell(const char* table, int row, int column) {
    const auto* model = child<QTableView>(screen(), table).model();
    return model->index(row, column).data(Qt::DisplayRole).toString();
}

int PantryWindow::rowOf(const char* table, const QString& first) {
    const auto* model = child<QTableView>(screen(), table).model();
    for (int i = 0; i < model->rowCount(); ++i)
        if (model->index(i, 0).data(Qt::DisplayRole).toString() == first) return i;
    return -1;
}

}  // namespace nettare
