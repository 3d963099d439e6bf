#pragma once

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QPushButton;
class QStackedWidget;

namespace nettare {

class EmptyState;
class FoodBrowser;
class FoodCard;
class FoodsSideBySide;
class KitchenSession;
class LabelForm;
class OwnFoodForm;
class Pane;
class ScreenHeader;
enum class LabelStart;
struct OwnFood;
struct TableRow;

/// The foods at hand: found at the left, read in the middle, compared, and made or changed where
/// they are the kitchen's own. A package label is typed at the right, or in the place of the food
/// where the window has no room for three columns.
class PantryScreen : public QWidget {
    Q_OBJECT

public:
    explicit PantryScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// The parts that F6 stops at.
    [[nodiscard]] std::vector<Pane*> panes() const;
    void showFood(const TableRow& row);
    /// To the field that searches.
    void find();
    /// To the form of a label: an empty one, or the one that is not saved yet.
    void newLabel();

    /// A photograph of a package from a file, for the label that is being typed.
    void takePhoto(const QString& path);

signals:
    /// A file with a photograph is to be chosen.
    void photoAsked();
    /// A table of foods is to be brought in.
    void bringInTableAsked();
    void recipeAsked(const QString& id);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

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
    LabelForm& labelForm();
    void correctLabel();
    void beginLabel(const OwnFood& before, LabelStart start);
    void labelDone(const TableRow& row);
    void showLabelPane();
    void hideLabelPane();
    /// Goes on with a label that was not saved when the window closed.
    void resumeLabel();
    /// Puts the label's form away; what was typed stays in it.
    void leaveLabel();
    void arrange();

    KitchenSession& kitchen_;
    ScreenHeader* header_;
    FoodBrowser* browser_;
    Pane* middle_;
    QStackedWidget* stack_;
    EmptyState* empty_;
    FoodCard* card_;
    FoodsSideBySide* sideBySide_;
    OwnFoodForm* form_ = nullptr;
    Pane* labelPane_;
    LabelForm* labelForm_ = nullptr;
    QPushButton* newLabel_;
    QHBoxLayout* row_ = nullptr;
    bool resumed_ = false;
    QWidget *cardPage_ = nullptr, *comparePage_ = nullptr, *formPage_ = nullptr;
};

}  // namespace nettare
