#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/which_row/row_model.h"
#include "app/which_row/which_row_screen.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace nettare {

namespace {

/// The rows of one food of the skewers.
struct RowDesk {
    DemoWindow demo;
    WhichRowScreen& screen;

    explicit RowDesk(const char* line) : screen{shown(line)} {}

    WhichRowScreen& shown(const char* line) {
        demo.window().showScreen(QStringLiteral("rows"));
        auto& rows = *demo.window().findChild<WhichRowScreen*>();
        rows.askAbout(line);
        settle();
        return rows;
    }
    QTableView& table() { return child<QTableView>(screen, "rowOptions"); }
    QString cell(int row, int column) {
        return table().model()->index(row, column).data().toString();
    }
    int rowNamed(const QString& start) {
        for (int row = 0; row < table().model()->rowCount(); ++row)
            if (cell(row, RowModel::Name).startsWith(start)) return row;
        return -1;
    }
};

}  // namespace

TEST_CASE("the rows that a food could be stand side by side with what they do to the figures") {
    RowDesk desk{"prawns"};
    REQUIRE(desk.table().model()->rowCount() >= 2);
    CHECK(desk.cell(0, RowModel::Name).contains(QStringLiteral("as it is now")));
    const int cooked = desk.rowNamed(QStringLiteral("shrimp, cooked"));
    REQUIRE(cooked > 0);
    CHECK(desk.cell(cooked, RowModel::Treatment).contains(QStringLiteral("cooked")));
    // SR28: 85 kcal raw (15270), 99 cooked (15271).
    CHECK(desk.cell(0, RowModel::Per100g) == QStringLiteral("85"));
    CHECK(desk.cell(cooked, RowModel::Per100g) == QStringLiteral("99"));
    CHECK(desk.cell(cooked, RowModel::Energy).contains(QLatin1Char{'+'}));
    CHECK_FALSE(child<QPushButton>(desk.screen, "useRow").isEnabled());
    keepPicture(desk.demo.window(), QStringLiteral("which-row"));
}

TEST_CASE("a row is taken as one step of undo, and what was weighed stays weighed") {
    RowDesk desk{"prawns"};
    const double before = desk.demo.kcal();
    const int cooked = desk.rowNamed(QStringLiteral("shrimp, cooked"));
    REQUIRE(cooked > 0);
    desk.table().selectRow(cooked);
    const QString promised = desk.cell(cooked, RowModel::Energy);
    click(child<QPushButton>(desk.screen, "useRow"));
    settle();
    CHECK(desk.demo.kcal() > before);
    CHECK(promised.startsWith(QString::number(qRound(desk.demo.kcal()))));
    CHECK(desk.demo.draft().undoStack().index() == 1);
    const Json& lines = *desk.demo.draft().document().find("lines");
    CHECK((*lines.items())[0].find("series") != nullptr);
    desk.demo.draft().undoStack().undo();
    CHECK(desk.demo.kcal() == before);
}

TEST_CASE("each food of the recipe can be asked about, and one with a single row says so") {
    RowDesk desk{"salt"};
    auto& foods = child<QComboBox>(desk.screen, "rowFood");
    CHECK(foods.currentText() == QStringLiteral("fine salt"));
    CHECK(foods.count() == 7);
    CHECK(desk.table().model()->rowCount() >= 1);
    pressKey(foods, Qt::Key_Home);
    emit foods.activated(0);
    CHECK(desk.rowNamed(QStringLiteral("shrimp")) == 0);
}

}  // namespace nettare
