#include "app/compare/change_cards.h"
#include "app/compare/compare_screen.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/revisions/revision_screen.h"
#include "app/theme/theme.h"
#include "app/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QDBusConnection>
#include <QTableView>

namespace nettare {

namespace {

/// The window on the demo kitchen with its history.
struct HistoryWindow {
    Theme theme{QDBusConnection{QStringLiteral("no bus")}};
    std::unique_ptr<KitchenSession> kitchen = sampleSession();
    MainWindow window{*kitchen, theme};

    HistoryWindow() { showReady(window, {1280, 800}); }
};

}  // namespace

TEST_CASE("from the revision list two revisions are compared in the window, by keys") {
    HistoryWindow demo;
    demo.window.commands().revisions->trigger();
    auto& list = child<QTableView>(demo.window, "revisions");
    REQUIRE(list.isVisible());
    keepPicture(demo.window, QStringLiteral("window-revisions"));
    list.setFocus();
    pressKey(list, Qt::Key_Down);
    pressKey(list, Qt::Key_Down, Qt::ShiftModifier);
    pressKey(list, Qt::Key_Return);
    auto& compare = *demo.window.findChild<CompareScreen*>();
    CHECK(compare.isVisible());
    REQUIRE(waitUntil([&] { return !compare.isBusy(); }));
    const auto& cards = demo.window.findChild<ChangeCards*>()->cards();
    REQUIRE_FALSE(cards.empty());
    CHECK_THAT(cards.front()->words().detail.toStdString(), Catch::StartsWith("165 → 153"));
    settle();
    keepPicture(demo.window, QStringLiteral("window-compare-two"));
}

TEST_CASE("the window shows the panel and the comparison by their keys") {
    HistoryWindow demo;
    for (const char* name : {"compare", "panel", "sheet"}) {
        QAction* const action = demo.window.findChild<QAction*>(QLatin1String{name});
        INFO(name);
        REQUIRE(action != nullptr);
        REQUIRE_FALSE(action->shortcut().isEmpty());
        const QKeyCombination keys = action->shortcut()[0];
        pressKey(demo.window, keys.key(), keys.keyboardModifiers());
        CHECK(demo.window.screens().current() == QLatin1String{name});
        settle();
        keepPicture(demo.window, QStringLiteral("window-") + QLatin1String{name});
    }
}

}  // namespace nettare
