#include "app/window/menus.h"

#include <QCoreApplication>
#include <QMenuBar>

#include "app/window/commands.h"
#include "app/window/screen_stack.h"

namespace nettare {

namespace {

struct MenuWords {
    Q_DECLARE_TR_FUNCTIONS(Menus)
};

QMenu* menuOf(QMenuBar& bar, const QString& title, const QList<QAction*>& actions) {
    QMenu* menu = bar.addMenu(title);
    for (QAction* action : actions) {
        if (action == nullptr)
            menu->addSeparator();
        else
            menu->addAction(action);
    }
    return menu;
}

void buildView(QMenuBar& bar, const Commands& c, ScreenStack& screens) {
    QMenu* view = menuOf(bar, MenuWords::tr("&View"), {});
    QAction* const afterScreens = view->addSeparator();
    for (QAction* screen : screens.actions()) view->insertAction(afterScreens, screen);
    QObject::connect(
        &screens, &ScreenStack::screenAdded, view,
        [view, afterScreens](QAction* screen) { view->insertAction(afterScreens, screen); });
    view->addActions({c.path, c.copyPath, c.printPath});
    view->addSeparator();
    view->addActions({c.findRecipe, c.findFood, c.nextPane, c.paneBefore});
    view->addSeparator();
    QMenu* shade = view->addMenu(MenuWords::tr("&Colours"));
    shade->addActions({c.followSystem, c.light, c.dark});
}

}  // namespace

void buildMenus(QMenuBar& bar, const Commands& c, ScreenStack& screens) {
    menuOf(bar, MenuWords::tr("&Kitchen"),
           {c.newRecipe, nullptr, c.openKitchen, c.keepKitchen, c.backUp, nullptr, c.newLabel,
            c.bringInTable, nullptr, c.quit});
    menuOf(bar, MenuWords::tr("&Edit"), {c.undo, c.redo});
    menuOf(
        bar, MenuWords::tr("&Recipe"),
        {c.addLine, c.addStep,    c.removeLine, c.moveUp,    c.moveDown, c.optionalLine, nullptr,
         c.weigh,   c.nextWay,    c.wayBefore,  c.betterWay, c.assume,   c.fromLedger,   c.whichRow,
         nullptr,   c.tryAmounts, c.limits,     nullptr,     c.keep,     c.revisions});
    buildView(bar, c, screens);
    menuOf(bar, MenuWords::tr("&Help"), {c.keys, c.about});
}

}  // namespace nettare
