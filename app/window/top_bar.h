#pragma once

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include "app/window/pane.h"

namespace nettare {

class KitchenSession;
class ScreenStack;

/// The bar at the top: title of the recipe, how far it is saved, undo and redo, the screens, and
/// the one main action.
class TopBar : public Pane {
    Q_OBJECT

public:
    TopBar(KitchenSession& kitchen, QAction* undo, QAction* redo, QAction* keep,
           QWidget* parent = nullptr);

    /// A button that shows a screen, left of the main action.
    void addScreenButton(QAction* action);

private:
    void showTitle();
    void showState();
    QWidget* makeIconButton(QAction* action);

    KitchenSession& kitchen_;
    QLabel* title_;
    QLabel* state_;
    QHBoxLayout* screens_;
    QPushButton* keep_;
    QTimer clock_;
};

}  // namespace nettare
