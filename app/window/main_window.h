#pragma once

#include <QMainWindow>
#include <QPointer>
#include <QUndoGroup>

#include <memory>

#include "app/theme/theme.h"
#include "app/window/commands.h"
#include "app/window/path_asker.h"
#include "app/window/screen_stack.h"
#include "core/food/component.h"

namespace nettare {

struct Error;
class InlineBar;
class KeepBar;
class KitchenSession;
class PaneRing;
class PantryScreen;
class PathScreen;
class SheetScreen;
class TopBar;

/// The window of one open kitchen: menus, top bar, banners and the screens. It wires commands to
/// the session and to the screens, and nothing else.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// Kitchen and theme must outlive the window. Without `paths` the desktop's dialogs ask.
    MainWindow(KitchenSession& kitchen, Theme& theme, std::unique_ptr<PathAsker> paths = {});
    ~MainWindow() override;

    /// Adds a screen with the action that shows it: a button in the top bar, an entry in View and
    /// the next of the keys Ctrl+1, Ctrl+2 ... Takes both over.
    void addScreen(const QString& name, QAction* action, QWidget* screen);
    void showScreen(const QString& name) { screens_->show(name); }
    [[nodiscard]] ScreenStack& screens() { return *screens_; }
    [[nodiscard]] const Commands& commands() const { return commands_; }
    [[nodiscard]] PantryScreen& pantry() { return *pantry_; }
    /// One sentence in the window, until the next change or until it is closed.
    void say(const QString& sentence);

signals:
    /// The cook wants that kitchen in place of this one.
    void kitchenAsked(const QString& path);

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void build();
    void connectKitchenCommands();
    void connectRecipeCommands();
    void connectViewCommands();
    void addOwnScreens();
    void addPathScreen();
    void addRowScreen();
    void addImportScreen();
    void addPantry();
    void addBench();
    /// Undo and redo are those of the screen that is shown.
    void followUndo();
    void showPath(Component component);
    /// The path that is open, or that of the figure chosen on the sheet.
    void needPath();
    void followDraft();
    void followRights();
    void showTitle();
    void keepKitchen();
    /// Whether the kitchen may be left: all is written, or the cook was told that it cannot be.
    [[nodiscard]] bool mayLeave();
    void tell(const Error& error);

    KitchenSession& kitchen_;
    Theme& theme_;
    std::unique_ptr<PathAsker> paths_;
    QUndoGroup undo_;
    Commands commands_;
    PaneRing* panes_;
    ScreenStack* screens_;
    TopBar* top_;
    InlineBar* message_;
    KeepBar* keep_;
    SheetScreen* sheet_;
    PathScreen* path_ = nullptr;
    PantryScreen* pantry_ = nullptr;
    bool toldUnwritten_ = false;  ///< since the last change
};

}  // namespace nettare
