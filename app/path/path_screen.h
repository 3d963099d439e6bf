#pragma once

#include <QWidget>

#include <functional>
#include <memory>
#include <optional>

#include "app/path/path_question.h"
#include "app/session/kitchen_session.h"
#include "app/work/task_runner.h"
#include "core/nutrition/next_act.h"
#include "core/publish/path.h"
#include "core/simulation/figure_model.h"

class QPrinter;
class QPushButton;
class QStackedLayout;

namespace nettare {

class BasisSwitch;
class EmptyState;
class FigurePlots;
class MessageLine;
class PathSide;
class PathTree;
class ScreenHeader;

/// Where a figure comes from: its path down to readings, labels and tables, what makes it unsure,
/// what to weigh next, and a simulation that checks it. Escape ends what runs, then leads back to
/// the sheet.
class PathScreen : public QWidget {
    Q_OBJECT

public:
    /// Lets the cook choose printer and paper; false where they changed their mind.
    using AskForPrinter = std::function<bool(QWidget* window, QPrinter& printer)>;

    PathScreen(KitchenSession& kitchen, AskForPrinter ask, QWidget* parent = nullptr);
    ~PathScreen() override;

    void showFigure(PathQuestion question);
    [[nodiscard]] PathQuestion question() const { return question_; }
    /// The whole path as text to the clipboard; false where there is none.
    bool copyPath();
    /// The working sheet to a printer or a PDF.
    void printSheet();
    /// Of the simulations from now on; a million if nothing else is said.
    void setTrials(std::uint64_t trials);
    /// Neither the next act nor a simulation is being computed.
    [[nodiscard]] bool isCalm() const { return !tasks_.busy(); }
    /// Shows the path (0) or the plots (1).
    void showPage(int page);

signals:
    void sheetWanted();
    /// By its id.
    void lineWanted(const QString& line);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    using Evaluated = std::shared_ptr<const Evaluation>;

    /// The last simulation, with what it is of.
    struct Simulated {
        Evaluated of;
        PathQuestion question;
        Simulation result;
    };

    void buildHeader();
    QWidget* buildBody();
    void followDraft();
    void refresh();
    void lookAtDraft();
    void showEmpty(const QString& headline, const QString& words, bool offerSheet);
    void showEvaluation(const Evaluated& evaluation);
    void showTrouble(const DraftSession& draft);
    void findNext();
    void offerSimulation();
    void simulateNow();
    void cancelSimulation();
    /// Of what is shown; null where none was run.
    [[nodiscard]] const Simulation* simulation() const;
    void showSimulation();
    void showPlots();
    void goToLine(std::size_t line);
    void fetchLedgerHead();
    [[nodiscard]] const Figures& figures() const;
    [[nodiscard]] const Figure& figure() const { return figures()[question_.component]; }

    KitchenSession& kitchen_;
    AskForPrinter ask_;
    PathQuestion question_;
    ScreenHeader* header_;
    BasisSwitch* pages_;
    QPushButton *copy_, *print_;
    MessageLine *report_, *trouble_;
    PathTree* tree_;
    PathSide* side_;
    FigurePlots* plots_;
    EmptyState* empty_;
    QStackedLayout* stack_ = nullptr;
    std::uint64_t trials_ = SimulationPlan{}.trials;
    bool stale_ = true;
    Evaluated evaluation_;  ///< that is shown; null where nothing is
    PathStep path_;
    std::vector<BudgetShare> shares_;
    QString nextAct_, nextOutcome_;
    std::optional<Simulated> simulated_;
    LedgerEnd ledgerEnd_;
    TaskRunner tasks_;  ///< last: it ends before what its answers touch
};

}  // namespace nettare
