#pragma once

#include <QStackedWidget>
#include <QWidget>

#include <vector>

#include "core/support/error.h"

namespace nettare {

class FiguresPane;
class KitchenSession;
class Pane;
class ScaleStrip;
class SheetPane;
class Shelf;

/// The main screen: shelf at the left, the sheet, its figures at the right, the scale at the foot.
class SheetScreen : public QWidget {
    Q_OBJECT

public:
    explicit SheetScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// In the order of F6.
    [[nodiscard]] std::vector<Pane*> panes() const;
    /// Of the open recipe.
    [[nodiscard]] QString title() const;

    [[nodiscard]] FiguresPane& figures() { return *figures_; }

    // What commands do here.
    void goToLine(const QString& line);
    /// Id of the line that the note below the table is about; empty where none is.
    [[nodiscard]] std::string currentLine() const;
    void addLine();
    void addStep();
    void removeCurrent();
    void moveCurrent(bool up);
    void toggleOptional();
    void takeNextWay(bool back);
    void takeBetterWay();
    void assumeGrams();
    /// Asks which series or reading of the ledger weighs the line.
    void bindLine();
    void weigh();
    void findRecipe();
    /// The recipe that opens next gets the focus on its title, to be typed over.
    void titleNext() { titleNext_ = true; }

signals:
    void newRecipeAsked();
    void rowsAsked();
    void failed(const nettare::Error& error);

private:
    QWidget* makeEmpty();
    void followDraft();
    void openFirst();

    KitchenSession& kitchen_;
    Shelf* shelf_;
    SheetPane* sheet_;
    FiguresPane* figures_;
    ScaleStrip* scale_;
    QStackedWidget* middle_;
    bool titleNext_ = false;
};

}  // namespace nettare
