#pragma once

#include "app/compare/compare_choice.h"
#include "app/session/kitchen_session.h"
#include "app/work/task_runner.h"

#include <QWidget>

#include <map>
#include <memory>
#include <optional>

class QPushButton;
class QScrollArea;
class QStackedLayout;

namespace nettare {

class BringBackBar;
class ComparisonPage;
class EmptyState;
class ScreenHeader;

/// Any two states of the open recipe side by side. Follows the draft while it is in sight.
class CompareScreen : public QWidget {
    Q_OBJECT

public:
    explicit CompareScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Nothing for the draft; a revision that is not there is left out.
    void compare(StateOf left, StateOf right);
    /// True while what is shown is behind what is chosen.
    [[nodiscard]] bool isBusy() const { return busy_; }

signals:
    void keepAsked();
    void sheetWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildHeader();
    QWidget* buildBody();
    void followRecipe();
    void followRevisions();
    void followDraft();
    void choose(StatePair pair);
    void refresh();
    void showEmpty();
    void showNoFigures();
    void showIncomparable(const Error& error);
    void showFailure(const Error& error);
    [[nodiscard]] QString titleOf(StateOf state) const;
    void opened(int number, const OpenedRevision& revision);
    [[nodiscard]] bool draftTouched() const;
    [[nodiscard]] std::shared_ptr<const Evaluation> evaluationOf(StateOf state);
    void askBringBack();
    void nameBringBack();

    KitchenSession& kitchen_;
    ScreenHeader* header_;
    QPushButton* bringBack_;
    BringBackBar* bar_;
    QStackedLayout* stack_;
    QScrollArea* stripArea_;
    StateStrip* strip_;
    ComparisonPage* page_;
    EmptyState* empty_;
    CompareChoice choice_;
    QString recipe_;
    StateOf left_, right_;
    bool chosen_ = false;  ///< by the cook; else the newest two follow
    std::map<int, std::shared_ptr<const Evaluation>> kept_;
    std::optional<int> opening_;
    bool busy_ = false, stale_ = true;
    TaskRunner tasks_;
};

}  // namespace nettare
