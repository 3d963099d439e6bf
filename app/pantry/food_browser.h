#pragma once

#include <QLineEdit>
#include <QListView>
#include <QTimer>

#include <optional>
#include <vector>

#include "app/pantry/food_list_model.h"
#include "app/window/pane.h"

class QLabel;
class QPushButton;
class QStackedLayout;

namespace nettare {

class EmptyState;
class KitchenSession;

/// The left side of the pantry: a field that searches with each key, and the list of what it finds.
/// While it is empty the list is for looking around: what this kitchen uses, its own foods, then
/// the groups of the tables, each of which opens page by page.
class FoodBrowser : public Pane {
    Q_OBJECT

public:
    /// As many foods as can stand side by side.
    static constexpr std::size_t kMostCompared = 4;

    explicit FoodBrowser(KitchenSession& kitchen, QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<TableRow>& compared() const { return compared_; }
    /// Takes a food among those to compare, or out of them; says so where there is no more room.
    void toggleCompared(const TableRow& row);
    void clearCompared();
    /// Selects the food where the list has it.
    void select(const TableRow& row);
    void focusField();

signals:
    void foodChosen(const nettare::TableRow& row);
    void compareAsked();
    void comparedChanged();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void build();
    QWidget* buildHead();
    QWidget* buildFoot();
    void follow();
    void search();
    void browse();
    void browseGroup(const FoodGroup& group);
    void leaveGroup();
    void fill(std::vector<FoodListRow> rows, FoodListModel::NextPage next = {});
    void choose(const QModelIndex& index);
    void open(const QModelIndex& index);
    bool keyInField(int key);
    bool keyInList(int key);
    void sayCompared();

    KitchenSession& kitchen_;
    QLineEdit* field_;
    QLabel* slip_;
    QWidget* place_;
    QPushButton* back_;
    QLabel* placeName_;
    FoodListModel* model_;
    QListView* list_;
    QStackedLayout* stack_;
    EmptyState* empty_;
    QWidget* foot_;
    QLabel* chosen_;
    QPushButton *compare_, *clear_;
    std::vector<FoodGroup> groups_;
    std::optional<FoodGroup> group_;
    std::optional<TableRow> selected_;
    std::vector<TableRow> compared_;
};

}  // namespace nettare
