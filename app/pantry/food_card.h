#pragma once

#include <QWidget>

#include <optional>
#include <vector>

#include "core/food/own_food.h"
#include "db/kitchen/own_food_record.h"

class QLabel;
class QPushButton;

namespace nettare {

class CellsModel;
class KitchenSession;
class LabelCard;
class MergeBar;
struct FoodSeries;
class MessageLine;
class MovedList;
class WholeTable;

/// One food of the pantry: what it is and where it is from, every value with how it is known, its
/// kitchen measures, and the recipes that use it.
class FoodCard : public QWidget {
    Q_OBJECT

public:
    explicit FoodCard(KitchenSession& kitchen, QWidget* parent = nullptr);

    void show(const TableRow& row);
    /// What is shown; nothing at first, or where it is gone.
    [[nodiscard]] const std::optional<TableFood>& food() const { return food_; }
    /// Reads it again.
    void refresh();
    void setCompared(bool compared);
    /// Looks for the published figures that the version shown would move, once it is the one that
    /// counts.
    void lookForMoved(const TableRow& row);

signals:
    void adjustAsked();   ///< copy a row and change it, or change an own food
    void correctAsked();  ///< a slip in the version shown of a labelled food
    void compareToggled();
    void recipeAsked(const QString& id);
    void shown();

private:
    void build();
    QWidget* buildActions();
    void showHead();
    void showValues();
    void showMeasures(const std::vector<FoodSeries>& series);
    void showUses(std::vector<FoodUse> uses);
    void offerToMove();
    void moveOn();
    void openUse(int row);
    [[nodiscard]] const OwnFoodRecord* own() const;

    KitchenSession& kitchen_;
    std::optional<TableRow> row_;
    std::optional<TableFood> food_;
    std::vector<FoodUse> uses_;
    std::optional<TableRow> lookFor_;  ///< that moved figures are wanted of
    int recipes_ = -1;
    int asked_ = 0;  ///< counts, so that only the newest answer shows
    QLabel *name_, *facts_, *origin_;
    QPushButton *adjust_, *correct_, *compare_, *retire_, *merge_;
    MergeBar* mergeBar_;
    MessageLine* offer_;
    MovedList* moved_;
    LabelCard* label_;
    CellsModel *values_, *measures_, *useRows_;
    WholeTable *valueTable_, *measureTable_, *useTable_;
    QLabel *measureHead_, *useHead_;
};

}  // namespace nettare
