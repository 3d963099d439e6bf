#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/widgets/wheel_guard.h"
#include "app/window/pane.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QTableView>

#include <map>
#include <set>

namespace nettare {

namespace {

bool takesTab(const QWidget& widget) {
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 &&
           widget.focusProxy() == nullptr;
}

std::string describe(const QWidget& widget) {
    return widget.metaObject()->className() + std::string{" "} + widget.objectName().toStdString();
}

/// Every menu entry, with those of submenus.
void entriesOf(const QMenu& menu, std::vector<QAction*>& entries) {
    for (QAction* action : menu.actions()) {
        if (action->isSeparator()) continue;
        entries.push_back(action);
        if (action->menu() != nullptr) entriesOf(*action->menu(), entries);
    }
}

}  // namespace

TEST_CASE("everything that takes the focus has a name for screen readers") {
    DemoWindow demo;
    for (QWidget* widget : demo.window().findChildren<QWidget*>()) {
        if (!takesTab(*widget)) continue;
        INFO(describe(*widget));
        CHECK_FALSE(spokenOf(*widget).name.isEmpty());
    }
}

TEST_CASE("Tab visits every place of the window once and ends in no trap") {
    DemoWindow demo;
    std::set<QWidget*> expected;
    for (QWidget* widget : demo.window().findChildren<QWidget*>())
        if (takesTab(*widget)) expected.insert(widget);
    child<QLineEdit>(demo.window(), "findRecipeField").setFocus();
    QWidget* const first = QApplication::focusWidget();
    std::set<QWidget*> visited{first};
    for (std::size_t i = 0; i < expected.size() + 5; ++i) {
        pressKey(*QApplication::focusWidget(), Qt::Key_Tab);
        if (QApplication::focusWidget() == first) break;
        INFO(describe(*QApplication::focusWidget()) << " is visited twice");
        CHECK(visited.insert(QApplication::focusWidget()).second);
    }
    CHECK(QApplication::focusWidget() == first);
    for (QWidget* widget : expected) {
        // The members of a switch share one stop.
        if (widget->parentWidget() == &child<QWidget>(demo.window(), "basis")) continue;
        INFO(describe(*widget) << " is not visited");
        CHECK(visited.contains(widget));
    }
}

TEST_CASE("F6 goes round the panes and the active one has the rim") {
    DemoWindow demo;
    std::vector<Pane*> panes;
    for (Pane* pane : demo.window().findChildren<Pane*>())
        if (pane->isVisible()) panes.push_back(pane);
    CHECK(panes.size() == 5);
    std::set<Pane*> entered;
    for (std::size_t i = 0; i < panes.size(); ++i) {
        pressKey(demo.window(), Qt::Key_F6);
        for (Pane* pane : panes)
            if (pane->isActive()) entered.insert(pane);
    }
    CHECK(entered.size() == panes.size());
    CHECK(std::ranges::count_if(panes, [](Pane* pane) { return pane->isActive(); }) == 1);
}

TEST_CASE("no two commands share their keys, and no two entries of a menu their letter") {
    DemoWindow demo;
    std::map<QString, int> keys;
    for (const QAction* action : demo.window().actions())
        if (!action->shortcut().isEmpty()) ++keys[action->shortcut().toString()];
    for (const auto& [sequence, count] : keys) {
        INFO(sequence.toStdString());
        CHECK(count == 1);
    }
    for (const QAction* top : demo.window().menuBar()->actions()) {
        std::map<QChar, int> letters;
        for (const QAction* action : top->menu()->actions()) {
            const qsizetype mark = action->text().indexOf(QLatin1Char{'&'});
            if (action->isSeparator() || !action->isVisible()) continue;
            INFO(action->text().toStdString());
            CHECK(mark >= 0);
            if (mark >= 0) CHECK(++letters[action->text().at(mark + 1).toLower()] == 1);
        }
    }
}

TEST_CASE("every command stands in a menu") {
    DemoWindow demo;
    std::vector<QAction*> entries;
    for (const QAction* top : demo.window().menuBar()->actions()) entriesOf(*top->menu(), entries);
    for (QAction* action : demo.window().actions()) {
        INFO(action->objectName().toStdString());
        CHECK(std::ranges::find(entries, action) != entries.end());
    }
}

TEST_CASE("the wheel edits nothing that has no focus") {
    DemoWindow demo;
    const WheelGuard guard;
    auto& purpose = child<QComboBox>(demo.window(), "purpose");
    child<QLineEdit>(demo.window(), "findRecipeField").setFocus();
    const int before = purpose.currentIndex();
    turnWheel(purpose, 2);
    CHECK(purpose.currentIndex() == before);
    CHECK_FALSE(purpose.hasFocus());
}

TEST_CASE("a recipe is edited, weighed and kept by keys alone") {
    DemoWindow demo;
    MainWindow& window = demo.window();
    pressKey(window, Qt::Key_F6);  // somewhere
    child<QTableView>(window, "lines").setFocus(Qt::TabFocusReason);
    QWidget* table = QApplication::focusWidget();
    pressKey(*table, Qt::Key_Down);
    pressKey(*table, Qt::Key_Down);
    pressKey(*table, Qt::Key_F2);
    QWidget* editor = QApplication::focusWidget();
    REQUIRE(qobject_cast<QLineEdit*>(editor) != nullptr);
    const double before = demo.kcal();
    typeText(*editor, QStringLiteral("2 tbsp"));
    pressKey(*editor, Qt::Key_Return);
    settle();
    CHECK(demo.kcal() < before);

    pressKey(window, Qt::Key_F8);
    auto& gross = child<QLineEdit>(window, "gross");
    REQUIRE(gross.hasFocus());
    typeText(gross, QStringLiteral("28.0"));
    pressKey(gross, Qt::Key_Return);
    CHECK(waitUntil([&] { return demo.draft().undoStack().count() == 2; }));

    pressKey(window, Qt::Key_K, Qt::ControlModifier);
    auto& note = child<QLineEdit>(window, "revisionNote");
    REQUIRE(note.hasFocus());
    typeText(note, QStringLiteral("less oil"));
    pressKey(note, Qt::Key_Return);
    REQUIRE(waitUntil([&] { return demo.kitchen().revisions().size() == 1; }));
    CHECK(demo.kitchen().revisions().front().note == "less oil");
}

}  // namespace nettare
