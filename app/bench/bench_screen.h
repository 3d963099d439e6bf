#pragma once

#include <QWidget>

#include <vector>

#include "app/bench/bench_desk.h"
#include "app/bench/to_weigh.h"
#include "app/bench/weigh_subject.h"

class QPushButton;
class QStackedWidget;

namespace nettare {

class BenchKeys;
class FoodForm;
class LedgerList;
class LedgerOutput;
class Pane;
class PathAsker;
class SeriesCard;
class TouchList;
class WeighPane;

/// The bench: what is weighed at the left, its series and the ledger at the right; for wet hands, a
/// metre away.
class BenchScreen : public QWidget {
    Q_OBJECT

public:
    /// `paths` asks for printer and file of the ledger, and must outlive the screen.
    BenchScreen(KitchenSession& kitchen, PathAsker& paths, QWidget* parent = nullptr);

    [[nodiscard]] BenchDesk& desk() { return desk_; }
    [[nodiscard]] WeighPane& weighing() { return *weigh_; }
    /// In the order of F6.
    [[nodiscard]] std::vector<Pane*> panes() const;
    /// The focus goes to the number.
    void begin();

signals:
    void sheetWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    enum class Page { Overview, Subjects, Food, Tares, Equipment, Lines };

    void build();
    QWidget* buildOverview();
    QWidget* equipmentPage(QWidget* equipment);
    void connectParts();
    void showPage(Page page);
    void showTab(int tab);
    void followRecipe();
    void fillSubjects();
    void fillTares();
    void askLine(const QString& reading);
    void takeSubject(int index);
    void takeTare(int index);
    void takeLine(int index);
    void showSeriesOf(const WeighSubject& subject);

    KitchenSession& kitchen_;
    BenchDesk desk_;
    WeighPane* weigh_;
    LedgerList* ledger_;
    SeriesCard* series_;
    LedgerOutput* output_;
    TouchList *todo_, *todoTab_, *subjects_, *tares_, *lines_;
    FoodForm* food_;
    BenchKeys* keys_;
    QStackedWidget* pages_;
    QWidget *tabRow_, *seriesPlace_ = nullptr;
    int tab_ = 0;
    std::vector<QPushButton*> tabButtons_;
    std::vector<ToWeigh> toWeigh_;
    std::vector<WeighSubject> offered_;
    std::vector<std::string> lineIds_;
    std::string binding_;  ///< UUID of the reading that a line is chosen for
};

}  // namespace nettare
