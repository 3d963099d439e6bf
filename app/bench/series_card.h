#pragma once

#include <QFrame>

#include <optional>

#include "app/bench/series_plot.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedLayout;
class QVBoxLayout;

namespace nettare {

class BenchDesk;
class EmptyState;
class FlowLayout;
class LeftOutList;
class SeriesPlotView;
class OutlierQuestion;
class RecipePromise;

/// The yield series that the bench looks at: which one, its conditions, its plot, and what it says.
/// Where none is shown yet, it shows the one weighed last.
class SeriesCard : public QFrame {
    Q_OBJECT

public:
    explicit SeriesCard(BenchDesk& desk, QWidget* parent = nullptr);
    ~SeriesCard() override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void buildPage();
    QWidget* buildControls();
    void followList();
    void followSeries();
    void showTags();
    void showPlot();
    void showSentences();
    void showPromise();
    void askAboutOutlier();
    void choose(int place);
    void showPool();
    void pool(int place);
    void splitByTags();
    void takeOthers();
    void takeEnough();
    /// The number of a field, 0 where it is empty; nothing, and a refusal, where it is none.
    std::optional<double> numberIn(QLineEdit& field, const QString& refusal);

    BenchDesk& desk_;
    QStackedLayout* stack_;
    EmptyState* empty_;
    QVBoxLayout* column_ = nullptr;
    QLabel *heading_, *summary_, *sentence_, *more_, *note_, *refusal_;
    QComboBox *choice_, *pool_;
    QWidget* tags_;
    FlowLayout* tagRow_;
    SeriesPlotView* plot_;
    OutlierQuestion* question_;
    LeftOutList* leftOut_;
    RecipePromise* promise_;
    QLabel* promised_;
    QLineEdit *others_, *enough_;
    QPushButton* inTime_;
    std::vector<PoolChoice> pools_;  ///< what pool_ offers, in its order
};

}  // namespace nettare
