#pragma once

#include <QAction>
#include <QUndoGroup>

namespace nettare {

/// Every command of the window as an action, whoever carries it out. Each has its words, its keys
/// where it has any, and an object name by which tests and the list of keys find it.
struct Commands {
    Commands(QUndoGroup& undoGroup, QWidget* window);

    // kitchen
    QAction *newRecipe, *openKitchen, *keepKitchen, *backUp, *newLabel, *bringInTable, *quit;
    // edit
    QAction *undo, *redo;
    // recipe
    QAction *addLine, *removeLine, *moveUp, *moveDown, *addStep, *keep, *revisions, *weigh;
    QAction *tryAmounts, *limits, *whichRow;
    QAction* optionalLine;
    QAction *nextWay, *wayBefore, *betterWay, *assume, *fromLedger;
    // view
    QAction *followSystem, *light, *dark, *findRecipe, *findFood, *nextPane, *paneBefore;
    QAction *path, *copyPath, *printPath;
    // help
    QAction *keys, *about;
};

}  // namespace nettare
