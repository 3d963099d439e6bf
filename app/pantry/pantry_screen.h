#pragma once

#include <QWidget>

#include <vector>

class QStackedWidget;

namespace nettare {

class EmptyState;
class FoodBrowser;
class FoodCard;
class FoodsSideBySide;
class KitchenSession;
class OwnFoodForm;
class Pane;
class ScreenHeader;
struct OwnFood;
struct TableRow;

/// The foods at hand: found at the left, read in the middle, compared, and made or changed where
/// they are the kitchen's own. What is entered from a package will stand at the right.
class PantryScreen : public QWidget {
    Q_OBJECT

public:
    explicit PantryScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// The parts that F6 stops at.
    [[nodiscard]] std::vector<Pane*> panes() const;
    void showFood(const TableRow& row);
    /// To the field that searches.
    void find();

signals:
    /// A table of foods is to be brought in.
    void bringInTableAsked();
    void recipeAsked(const QString& id);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildHeader();
    QWidget* buildMiddle();
    void connectParts();
    void sayCounts();
    void compare();
    void copyOrChange();
    void makeNew();
    void formDone(const TableRow& row);
    void backToCard();
    /// Made when it is first needed: it has some two hundred parts.
    OwnFoodForm& form();
    void beginForm(const OwnFood& before);

    KitchenSession& kitchen_;
    ScreenHeader* header_;
    FoodBrowser* browser_;
    Pane* middle_;
    QStackedWidget* stack_;
    EmptyState* empty_;
    FoodCard* card_;
    FoodsSideBySide* sideBySide_;
    OwnFoodForm* form_ = nullptr;
    QWidget *cardPage_ = nullptr, *comparePage_ = nullptr, *formPage_ = nullptr;
};

}  // namespace nettare
