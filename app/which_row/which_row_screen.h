#pragma once

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>

#include "app/which_row/row_options.h"

namespace nettare {

class BasisSwitch;
class EmptyState;
class KitchenSession;
class MessageLine;
class RowModel;
class ScreenHeader;

/// The rows of the tables that a cook could mean by one food of the recipe, side by side with what
/// each does to the figures; one is taken by a key, as one step of undo.
class WhichRowScreen : public QWidget {
    Q_OBJECT

public:
    explicit WhichRowScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Asks about the food of that line.
    void askAbout(const std::string& line);

signals:
    void sheetWanted();
    void failed(const nettare::Error& error);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void follow();
    void fillFoods();
    void refresh();
    void showEffect();
    void take();
    [[nodiscard]] const RowQuestion* question() const;

    KitchenSession& kitchen_;
    std::vector<RowQuestion> questions_;
    std::string food_;  ///< id of the entry that is asked about
    Basis basis_ = Basis::Portion;
    ScreenHeader* header_;
    QStackedWidget* stack_;
    EmptyState* empty_;
    QComboBox* foods_;
    BasisSwitch* switch_;
    RowModel* model_;
    QTableView* table_;
    QLabel *effect_, *hint_;
    MessageLine* message_;
    QPushButton* take_;
    bool stale_ = true;
};

}  // namespace nettare
