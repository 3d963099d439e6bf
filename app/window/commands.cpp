#include "app/window/commands.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QWidget>

#include "app/icons/icon_engine.h"

namespace nettare {

namespace {

struct CommandWords {
    Q_DECLARE_TR_FUNCTIONS(Commands)
};

/// An action of the window: its shortcut works wherever in it the focus is.
QAction* command(QWidget* window, const char* name, const QString& text,
                 const QKeySequence& sequence) {
    auto* action = new QAction{text, window};
    action->setObjectName(QLatin1String{name});
    action->setShortcut(sequence);
    action->setShortcutContext(Qt::WindowShortcut);
    window->addAction(action);
    return action;
}

QAction* undoCommand(QAction* action, const char* name, Sign sign, const QKeySequence& keys,
                     QWidget* window) {
    action->setObjectName(QLatin1String{name});
    action->setShortcut(keys);
    action->setIcon(iconOf(sign));
    window->addAction(action);
    return action;
}

void makeChoice(QWidget* window, std::initializer_list<QAction*> actions) {
    auto* group = new QActionGroup{window};
    for (QAction* action : actions) {
        action->setCheckable(true);
        group->addAction(action);
    }
}

}  // namespace

Commands::Commands(QUndoGroup& undoGroup, QWidget* window) {
    const auto make = [window](const char* name, const QString& text, const char* sequence = "") {
        return command(window, name, text, QKeySequence::fromString(QLatin1String{sequence}));
    };
    newRecipe = make("newRecipe", CommandWords::tr("&New recipe"), "Ctrl+N");
    openKitchen = make("openKitchen", CommandWords::tr("&Open kitchen…"), "Ctrl+O");
    keepKitchen = make("keepKitchen", CommandWords::tr("&Keep this kitchen…"), "Ctrl+Shift+S");
    backUp = make("backUp", CommandWords::tr("&Back up…"));
    newLabel = make("newPackageLabel", CommandWords::tr("New &label"), "Ctrl+Shift+L");
    bringInTable = make("bringInTable", CommandWords::tr("Bring in a &table…"));
    quit = make("quit", CommandWords::tr("&Quit"), "Ctrl+Q");

    undo = undoCommand(undoGroup.createUndoAction(window, CommandWords::tr("&Undo")), "undo",
                       Sign::Undo, QKeySequence::fromString(QStringLiteral("Ctrl+Z")), window);
    redo =
        undoCommand(undoGroup.createRedoAction(window, CommandWords::tr("&Redo")), "redo",
                    Sign::Redo, QKeySequence::fromString(QStringLiteral("Ctrl+Shift+Z")), window);

    addLine = make("addLine", CommandWords::tr("&Add line"), "Alt+Insert");
    removeLine = make("removeLine", CommandWords::tr("&Remove line or step"), "Alt+Delete");
    moveUp = make("moveUp", CommandWords::tr("Move line or step &up"), "Alt+Up");
    moveDown = make("moveDown", CommandWords::tr("Move line or step &down"), "Alt+Down");
    optionalLine = make("optionalLine", CommandWords::tr("&Optional line"), "Alt+O");
    addStep = make("addStep", CommandWords::tr("Add &step"), "Alt+Shift+Insert");
    keep = make("keep", CommandWords::tr("&Keep as revision…"), "Ctrl+K");
    revisions = make("revisions", CommandWords::tr("Re&visions"), "Ctrl+R");
    tryAmounts = make("tryAmounts", CommandWords::tr("Tr&y amounts"), "Ctrl+T");
    limits = make("limits", CommandWords::tr("L&imits and assumptions"), "Ctrl+L");
    whichRow = make("whichRow", CommandWords::tr("W&hich row of the table"), "Ctrl+Shift+R");
    weigh = make("weigh", CommandWords::tr("&Weigh"), "F8");
    nextWay = make("nextWay", CommandWords::tr("Next way to &grams"), "F4");
    wayBefore = make("wayBefore", CommandWords::tr("Way to grams &before"), "Shift+F4");
    betterWay = make("betterWay", CommandWords::tr("Take the be&tter way"), "F9");
    assume = make("assume", CommandWords::tr("Assu&me grams…"), "Ctrl+G");
    fromLedger = make("fromLedger", CommandWords::tr("&From the ledger…"), "Ctrl+Shift+G");

    followSystem = make("followSystem", CommandWords::tr("As the &system"));
    light = make("light", CommandWords::tr("&Light"));
    dark = make("dark", CommandWords::tr("&Dark"));
    makeChoice(window, {followSystem, light, dark});
    findRecipe = make("findRecipe", CommandWords::tr("&Find a recipe"), "Ctrl+F");
    findFood = make("findFood", CommandWords::tr("Find a foo&d"), "Ctrl+Shift+F");
    nextPane = make("nextPane", CommandWords::tr("&Next pane"), "F6");
    paneBefore = make("paneBefore", CommandWords::tr("Pan&e before"), "Shift+F6");
    path = make("path", CommandWords::tr("&Where it comes from"), "F7");
    copyPath = make("copyPathAsText", CommandWords::tr("Cop&y the path as text"), "Ctrl+Shift+C");
    printPath = make("printWorkingSheet", CommandWords::tr("P&rint working sheet…"), "Ctrl+P");

    keys = make("keys", CommandWords::tr("&Keys"), "F1");
    about = make("about", CommandWords::tr("&About Nettare"));
}

}  // namespace nettare
