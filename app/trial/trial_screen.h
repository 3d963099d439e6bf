#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>

#include "app/trial/trial.h"

namespace nettare {

class BasisSwitch;
class EmptyState;
class KitchenSession;
class MessageLine;
class ScreenHeader;
class SolveRow;
class TrialFiguresModel;
class TrialLinesModel;

/// Other amounts, tried without touching the draft: figures and differences follow at once, and an
/// amount is found that meets a limit. What is good is taken over as one step of undo.
class TrialScreen : public QWidget {
    Q_OBJECT

public:
    explicit TrialScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

signals:
    void sheetWanted();
    void failed(const nettare::Error& error);

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* buildFigures();
    void followDraft();
    void follow();
    void refresh();
    void showVerdicts(const TriedFigures& tried);
    void solve(std::size_t line, const TargetEntry& target);
    void takeOver();
    void startAgain();

    KitchenSession& kitchen_;
    Trial trial_;
    Basis basis_ = Basis::Portion;
    ScreenHeader* header_;
    QStackedWidget* stack_;
    EmptyState* empty_;
    TrialLinesModel* lines_;
    TrialFiguresModel* figures_;
    QTableView *linesTable_, *figuresTable_;
    BasisSwitch* switch_;
    QLabel *verdicts_, *hint_;
    MessageLine* message_;
    SolveRow* solve_;
    QPushButton *take_, *again_;
    bool stale_ = true;
};

}  // namespace nettare
