#include "app/gui/support/gui.h"
#include "app/gui/support/weigh.h"
#include "app/gui/window/demo_window.h"
#include "app/sheet/line_rows.h"

#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableView>

namespace nettare {

namespace {

bool showsRule(DemoWindow& demo, const char* name) {
    const auto* button = demo.window().findChild<QPushButton*>(QString::fromLatin1(name));
    return button != nullptr && button->isVisible();
}

/// Opens the list of a rule and takes the entry so many below the one that holds.
void chooseBelow(DemoWindow& demo, const char* name, int steps) {
    auto& button = child<QPushButton>(demo.window(), name);
    button.setFocus();
    pressKey(button, Qt::Key_Space);
    REQUIRE(waitUntil([] { return QApplication::activePopupWidget() != nullptr; }));
    QWidget& menu = *QApplication::activePopupWidget();
    CHECK_FALSE(spokenOf(menu).name.isEmpty());
    for (int i = 0; i < steps; ++i) pressKey(menu, Qt::Key_Down);
    pressKey(menu, Qt::Key_Return);
    // A screen without a window manager gives the window nothing back.
    demo.window().activateWindow();
    REQUIRE(waitUntil([&] { return demo.window().isActiveWindow(); }));
    settle();
}

void typeMakes(DemoWindow& demo, const QString& text) {
    auto& makes = child<QLineEdit>(demo.window(), "makes");
    makes.setFocus();
    makes.selectAll();
    typeText(makes, text);
    pressKey(makes, Qt::Key_Return);
    settle();
}

}  // namespace

TEST_CASE("a recipe that leaves nothing open shows no rules") {
    DemoWindow demo;
    CHECK_FALSE(showsRule(demo, "counts-0"));
}

TEST_CASE("a range of pieces counts by its middle, or as the cook says") {
    DemoWindow demo;
    const double ten = demo.kcal();
    typeMakes(demo, QStringLiteral("8-12 skewers"));
    CHECK(demo.kcal() == Approx(ten));
    auto& rule = child<QPushButton>(demo.window(), "counts-0");
    CHECK(rule.text() == QStringLiteral("8-12 skewers by the middle"));
    chooseBelow(demo, "counts-0", 1);
    CHECK(rule.text() == QStringLiteral("8-12 skewers by the least"));
    CHECK(demo.kcal() == Approx(ten * 10 / 8));
    demo.draft().undoStack().undo();
    CHECK(demo.kcal() == Approx(ten));
    CHECK(rule.text() == QStringLiteral("8-12 skewers by the middle"));
    typeMakes(demo, QStringLiteral("10 skewers"));
    CHECK_FALSE(rule.isVisible());
}

TEST_CASE("an optional line says so in its row and counts as the recipe's rule says") {
    DemoWindow demo;
    openPatties(demo);
    constexpr int kEgg = 3;
    const auto ingredient = [&] {
        return demo.lineText(kEgg, static_cast<int>(LineColumn::Ingredient));
    };
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setFocus();
    view.setCurrentIndex(view.model()->index(kEgg, 0));
    CHECK_FALSE(ingredient().contains(QStringLiteral("optional")));
    pressKey(view, Qt::Key_O, Qt::AltModifier);
    CHECK(ingredient().contains(QStringLiteral("optional")));
    const double whole = demo.kcal();
    CHECK(child<QPushButton>(demo.window(), "counts-0").text() ==
          QStringLiteral("optional counted"));
    CHECK(child<QPushButton>(demo.window(), "counts-1").text() ==
          QStringLiteral("ranges by the middle"));
    keepPicture(demo.window(), QStringLiteral("counts"));
    chooseBelow(demo, "counts-0", 1);
    CHECK(demo.kcal() < whole);
    CHECK(child<QPushButton>(demo.window(), "counts-0").text() ==
          QStringLiteral("optional left out"));
    pressKey(view, Qt::Key_O, Qt::AltModifier);
    CHECK_FALSE(ingredient().contains(QStringLiteral("optional")));
    CHECK(demo.kcal() == Approx(whole));
}

}  // namespace nettare
