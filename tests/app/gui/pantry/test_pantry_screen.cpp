#include "app/gui/pantry/pantry_window.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/widgets/screen_header.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

namespace nettare {

TEST_CASE(
    "an empty search field shows first what the kitchen uses, then the groups of the tables") {
    PantryWindow pantry;
    const QStringList rows = pantry.listed();
    REQUIRE(rows.size() > 10);
    CHECK(rows.front() == QStringLiteral("Used in this kitchen | "));
    CHECK(rows[1].contains(QStringLiteral("SR28")));
    CHECK(rows[1].contains(QStringLiteral("in 2 recipes")));
    CHECK(rows.contains(QStringLiteral("By group | ")));
    CHECK(pantry.screen().findChild<ScreenHeader*>()->subject() ==
          QStringLiteral("597 foods · 597 from SR28"));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-browse"));
}

TEST_CASE("each key in the field of the pantry searches, and the best food is shown at once") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("fenn"));
    CHECK(pantry.listed().front().startsWith(QStringLiteral("fennel")));
    CHECK(pantry.shown().startsWith(QStringLiteral("fennel")));
    pantry.search(QStringLiteral("fennel bulb"));
    CHECK(pantry.shown().contains(QStringLiteral("bulb")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-food"));
}

TEST_CASE("a search that finds nothing says what to do") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("qwxz"));
    CHECK(pantry.listed().isEmpty());
    auto& all = child<QPushButton>(pantry.screen(), "emptyAction");
    CHECK(all.text() == QStringLiteral("Show all foods"));
    click(all);
    CHECK(pantry.listed().size() > 10);
}

TEST_CASE("a group of a table opens by a key, page by page, and closes by another") {
    PantryWindow pantry;
    auto& list = child<QListView>(pantry.screen(), "foods");
    list.setFocus();
    int group = -1;
    const QStringList rows = pantry.listed();
    for (int i = 0; i < rows.size() && group < 0; ++i)
        if (rows[i].startsWith(QStringLiteral("vegetable |"))) group = i;
    REQUIRE(group > 0);
    list.setCurrentIndex(list.model()->index(group, 0));
    pressKey(list, Qt::Key_Right);
    CHECK(list.model()->rowCount() == 84);
    for (const QString& row : pantry.listed()) CHECK(row.contains(QStringLiteral("vegetable")));
    pressKey(list, Qt::Key_Left);
    CHECK(pantry.listed() == rows);
}

TEST_CASE("a food is shown with how each value is known, and missing says no data") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("fennel bulb raw"));
    const int protein = pantry.rowOf("foodValues", QStringLiteral("Protein"));
    REQUIRE(protein >= 0);
    CHECK(pantry.cell("foodValues", protein, 1) == QStringLiteral("1.24 g"));
    CHECK_FALSE(pantry.cell("foodValues", protein, 3).isEmpty());
    CHECK(child<QTableView>(pantry.screen(), "foodMeasures").model()->rowCount() > 0);
    pantry.search(QStringLiteral("shrimp raw"));
    int missing = 0;
    for (int row = 0; row < 41; ++row) {
        if (pantry.cell("foodValues", row, 1) != QStringLiteral("no data")) continue;
        ++missing;
        CHECK(pantry.cell("foodValues", row, 3) == QStringLiteral("not in the table"));
    }
    CHECK(missing > 10);
}

TEST_CASE("the cook's own series stands among the kitchen measures of its food") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("shrimp raw"));
    pantry.rest();
    CHECK(pantry.cell("foodMeasures", 0, 0) == QStringLiteral("1 prawn · prawns, peeled"));
    CHECK(pantry.cell("foodMeasures", 0, 3)
              .startsWith(QStringLiteral("your series, 6×, in Charred prawn")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-series"));
}

TEST_CASE("a recipe that uses the food opens from the pantry") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("beet"));
    pantry.rest();
    auto& uses = child<QTableView>(pantry.screen(), "foodUses");
    REQUIRE(uses.model()->rowCount() == 1);
    CHECK(pantry.cell("foodUses", 0, 1) == QStringLiteral("draft"));
    const QString title = pantry.cell("foodUses", 0, 0);
    uses.setFocus();
    uses.setCurrentIndex(uses.model()->index(0, 0));
    pressKey(uses, Qt::Key_Return);
    CHECK(waitUntil([&] { return pantry.demo().window().windowTitle().startsWith(title); }));
    CHECK(pantry.demo().window().screens().current() == QStringLiteral("sheet"));
}

TEST_CASE("up to four foods stand side by side, and what differs is said in words") {
    PantryWindow pantry;
    auto& list = child<QListView>(pantry.screen(), "foods");
    pantry.search(QStringLiteral("onions"));
    list.setFocus();
    for (int i = 0; i < 5; ++i) {
        list.setCurrentIndex(list.model()->index(i, 0));
        pressKey(list, Qt::Key_Space);
    }
    auto& compare = child<QPushButton>(pantry.screen(), "compareFoods");
    REQUIRE(compare.isVisible());
    click(compare);
    settle();
    const auto* model = child<QTableView>(pantry.screen(), "comparedFoods").model();
    CHECK(model->columnCount() == 6);
    bool told = false;
    for (int row = 0; row < model->rowCount(); ++row)
        told = told || pantry.cell("comparedFoods", row, 5).contains(QStringLiteral(" to "));
    CHECK(told);
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-compare"));
    click(child<QPushButton>(pantry.screen(), "clearCompared"));
    CHECK_FALSE(compare.isVisible());
    CHECK_FALSE(child<QTableView>(pantry.screen(), "comparedFoods").isVisible());
}

TEST_CASE("bringing in a table is asked for from the pantry") {
    PantryWindow pantry;
    const QSignalSpy asked{&pantry.screen(), &PantryScreen::bringInTableAsked};
    click(child<QPushButton>(pantry.screen(), "bringInTable"));
    CHECK(asked.count() == 1);
}

TEST_CASE("the pantry is found by keys, and everything in it has a name for a screen reader") {
    PantryWindow pantry;
    pantry.demo().window().showScreen(QStringLiteral("sheet"));
    pressKey(pantry.demo().window(), Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(child<QLineEdit>(pantry.screen(), "foodSearch").hasFocus());
    pantry.search(QStringLiteral("fennel bulb"));
    pressKey(*QApplication::focusWidget(), Qt::Key_Down);
    CHECK(child<QListView>(pantry.screen(), "foods").hasFocus());
    CHECK(unnamedFocusables(pantry.screen()).isEmpty());
}

}  // namespace nettare
