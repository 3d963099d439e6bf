#pragma once

#include <QWidget>

#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "core/support/result.h"

class QLabel;
class QPushButton;

namespace nettare {

class CellsModel;
class KitchenSession;
class WholeTable;
struct MovedRevision;

/// Which published figures the version of a food that counts would move by more than their
/// rounding: each with its recipe, before and after. Asked for by its button, and after a new pack.
class MovedList : public QWidget {
    Q_OBJECT

public:
    explicit MovedList(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Another food, or another version of it, is shown; nothing is looked for yet. What was looked
    /// for of the same one is looked for again where revisions may have been kept since.
    void setFood(const TableFood& food, bool hasOlder);
    /// Looks for them beside the window.
    void look();

signals:
    void recipeAsked(const QString& id);

private:
    void answer(const Result<std::vector<MovedRevision>>& moved);
    void show(const std::vector<MovedRevision>& moved);
    void tell(const QString& words, const char* tone);
    void offer(const QString& words);

    KitchenSession& kitchen_;
    TableRow row_;
    bool looked_ = false;               ///< the answer for that row is shown
    bool stale_ = false;                ///< revisions may have been kept since
    int asked_ = 0;                     ///< counts, so that only the newest answer shows
    std::vector<std::string> recipes_;  ///< of each row
    QLabel *head_, *words_;
    QPushButton* look_;
    CellsModel* rows_;
    WholeTable* table_;
};

}  // namespace nettare
