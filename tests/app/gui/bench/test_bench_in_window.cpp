#include "app/bench/bench_screen.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>

#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/window/top_bar.h"

namespace nettare {

TEST_CASE("one key leads to the bench, which has the window to itself, and Escape back") {
    DemoWindow demo;
    pressKey(demo.window(), Qt::Key_5, Qt::ControlModifier);
    settle();
    CHECK(demo.window().screens().current() == QStringLiteral("bench"));
    CHECK_FALSE(demo.window().findChild<TopBar*>()->isVisible());
    pressKey(*QApplication::focusWidget(), Qt::Key_Escape);
    if (demo.window().screens().current() == QStringLiteral("bench"))
        pressKey(*QApplication::focusWidget(), Qt::Key_Escape);
    CHECK(demo.window().screens().current() == QStringLiteral("sheet"));
    CHECK(demo.window().findChild<TopBar*>()->isVisible());
}

}  // namespace nettare
