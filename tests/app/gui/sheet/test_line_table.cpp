#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/session/edit_command.h"
#include "app/sheet/line_rows.h"
#include "app/theme/palette.h"
#include "app/theme/type.h"
#include "app/widgets/cell.h"
#include "app/widgets/message_line.h"
#include "app/window/action_words.h"

#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QAction>
#include <QCompleter>
#include <QLineEdit>
#include <QTableView>

namespace nettare {

namespace {

constexpr int kOil = 2;
constexpr int kLemon = 4;
constexpr int kAmount = static_cast<int>(LineColumn::Amount);
constexpr int kIngredient = static_cast<int>(LineColumn::Ingredient);
constexpr int kGrams = static_cast<int>(LineColumn::Grams);
constexpr int kWay = static_cast<int>(LineColumn::Way);

Cell cellOf(DemoWindow& demo, int row, int column) {
    const auto& view = child<QTableView>(demo.window(), "lines");
    return view.model()->index(row, column).data(kCellRole).value<Cell>();
}

}  // namespace

TEST_CASE("typing an amount moves the figures at each keystroke") {
    DemoWindow demo;
    const double before = demo.kcal();
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("6 tbsp"));
    CHECK(demo.kcal() > before * 1.2);
    CHECK(demo.lineText(kOil, kWay) == QStringLiteral("weighed, scaled"));
    pressKey(editor, Qt::Key_Return);
    settle();
    CHECK(demo.lineText(kOil, kAmount) == QStringLiteral("6 tbsp"));
}

TEST_CASE("undo inside a field takes the typing back, and redo brings it again") {
    DemoWindow demo;
    const double before = demo.kcal();
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("6 tbsp"));
    const double typed = demo.kcal();
    pressKey(editor, Qt::Key_Z, Qt::ControlModifier);
    CHECK(demo.kcal() == before);
    CHECK(static_cast<QLineEdit&>(editor).text() == QStringLiteral("3 tbsp"));
    CHECK_FALSE(demo.draft().undoStack().canUndo());
    pressKey(editor, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(demo.kcal() == typed);
    CHECK(static_cast<QLineEdit&>(editor).text() == QStringLiteral("6 tbsp"));
}

TEST_CASE("a unit on its way does not end a weighing") {
    DemoWindow demo;
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("3 t"));
    CHECK(demo.lineText(kOil, kWay) != QStringLiteral("weighed"));
    typeText(editor, QStringLiteral("bsp"));
    CHECK_FALSE(demo.draft().failure().has_value());
    CHECK(demo.lineText(kOil, kWay) == QStringLiteral("weighed"));
}

TEST_CASE("an amount that is none is marked in its place, and the last figures stay") {
    DemoWindow demo;
    const double before = demo.kcal();
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("some"));
    CHECK(editor.property("refused").toBool());
    CHECK(demo.kcal() == before);
    CHECK(child<MessageLine>(demo.window(), "trouble")
              .text()
              .startsWith(QStringLiteral("These are the last figures that could be computed. "
                                         "olive oil: “some” is no amount")));
    pressKey(editor, Qt::Key_Return);
    settle();
    CHECK(demo.lineText(kOil, kAmount) == QStringLiteral("some"));
    CHECK_FALSE(cellOf(demo, kOil, kAmount).problem.isEmpty());
    CHECK(cellOf(demo, kOil, kGrams).ink == Role::Ink2);
    demo.draft().undoStack().undo();
    CHECK(cellOf(demo, kOil, kAmount).problem.isEmpty());
    CHECK(child<MessageLine>(demo.window(), "trouble").text().isEmpty());
}

TEST_CASE("a unit that nothing is known of is told by the line's name, not by its id") {
    DemoWindow demo;
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("2 tub"));
    CHECK(child<MessageLine>(demo.window(), "trouble")
              .text()
              .startsWith(QStringLiteral("These are the last figures that could be computed. "
                                         "olive oil: nothing says what one tub of olive oil")));
}

TEST_CASE("assumed grams scale with the amount, and the line says so") {
    DemoWindow demo;
    const double before = demo.lineText(kLemon, kGrams).trimmed().toDouble();
    QWidget& editor = demo.edit(kLemon, kAmount);
    typeText(editor, QStringLiteral("1 lemon"));
    CHECK(demo.lineText(kLemon, kGrams).trimmed().toDouble() > before * 1.8);
    CHECK(demo.lineText(kLemon, kWay) == QStringLiteral("assumed, scaled"));
    pressKey(editor, Qt::Key_Z, Qt::ControlModifier);
    CHECK(demo.lineText(kLemon, kWay) == QStringLiteral("assumed"));
}

TEST_CASE("a second text takes as many lines as its words need") {
    DemoWindow demo;
    QWidget& editor = demo.edit(kOil, kIngredient);
    typeText(editor, QStringLiteral("olive oil, for the marinade and for the brush at the grill"));
    pressKey(editor, Qt::Key_Return);
    settle();
    auto& view = child<QTableView>(demo.window(), "lines");
    const int two = view.rowHeight(4);
    CHECK(view.rowHeight(kOil) >= two + QFontMetrics{typeFont(TypeSize::Header)}.height() - 2);
    keepPicture(demo.window(), QStringLiteral("wrapped-line"));
}

TEST_CASE("the words of undo keep an ampersand") {
    Edit edit;
    edit.kind = EditKind::Reading;
    edit.subject = "prawn & fennel";
    CHECK(undoText(edit) == QStringLiteral("reading of prawn && fennel"));
    QAction undo{QStringLiteral("&Undo ") + undoText(edit)};
    CHECK(actionWords(undo) == QStringLiteral("Undo reading of prawn & fennel"));
}

TEST_CASE("a line is added as it is written, its food completed while typing") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("2 cloves garli"));
    auto* completer = entry.findChild<QCompleter*>();
    REQUIRE(completer != nullptr);
    REQUIRE(completer->popup()->isVisible());
    pressKey(*completer->popup(), Qt::Key_Return);
    settle();
    CHECK(demo.lineText(7, kAmount) == QStringLiteral("2 cloves"));
    CHECK(demo.lineText(7, kIngredient) == QStringLiteral("garlic"));
    CHECK(entry.text().isEmpty());
    CHECK(entry.hasFocus());
}

TEST_CASE("the foods that fit can be read, the one that Enter takes is filled") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("2 cloves garli"));
    QAbstractItemView* list = entry.findChild<QCompleter*>()->popup();
    REQUIRE(list->isVisible());
    REQUIRE(list->model()->rowCount() > 1);
    settle();
    const QRect first = list->visualRect(list->model()->index(0, 0));
    const QRect second = list->visualRect(list->model()->index(1, 0));
    CHECK(first.height() >= QFontMetrics{typeFont(TypeSize::Body)}.height() + 4);
    CHECK(list->viewport()->rect().contains(first));
    CHECK(second.top() > first.bottom());
    const Shade shade = shadeOf(list->palette());
    const QImage shown = picture(*list->viewport());
    CHECK(shown.pixelColor(first.right() - 4, first.center().y()) ==
          colour(Role::Selection, shade));
    CHECK(shown.pixelColor(second.right() - 4, second.center().y()) == colour(Role::Raised, shade));
}

TEST_CASE("a new food comes from the table by its name, with its preparation") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("100 g celery, sliced"));
    pressKey(*entry.findChild<QCompleter*>()->popup(), Qt::Key_Escape);
    CHECK(entry.text() == QStringLiteral("100 g celery, sliced"));
    pressKey(entry, Qt::Key_Return);
    settle();
    CHECK(demo.draft().document().find("lines")->items()->size() == 8);
    CHECK(demo.lineText(7, kIngredient).startsWith(QStringLiteral("celery stalks · sliced")));
    CHECK(demo.lineText(7, kGrams).startsWith(QStringLiteral("100")));
}

TEST_CASE("a line without an amount or a food says what is missing") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("moon dust"));
    pressKey(entry, Qt::Key_Return);
    CHECK(entry.property("refused").toBool());
    CHECK(entry.text() == QStringLiteral("moon dust"));
    entry.clear();
    typeText(entry, QStringLiteral("2 moon dust"));
    pressKey(entry, Qt::Key_Return);
    CHECK(entry.property("refused").toBool());
    CHECK(demo.draft().document().find("lines")->items()->size() == 7);
    // A slip is shown in the list, but never taken for the cook.
    entry.clear();
    typeText(entry, QStringLiteral("40 g zuchini"));
    pressKey(entry, Qt::Key_Return);
    CHECK(demo.draft().document().find("lines")->items()->size() == 7);
}

TEST_CASE("another food is chosen from the list that opens in the cell") {
    DemoWindow demo;
    QWidget& editor = demo.edit(3, kIngredient);
    auto& field = static_cast<QLineEdit&>(editor);
    field.selectAll();
    typeText(field, QStringLiteral("ginger"));
    auto* completer = field.findChild<QCompleter*>();
    REQUIRE(completer != nullptr);
    REQUIRE(completer->popup()->isVisible());
    pressKey(*completer->popup(), Qt::Key_Return);
    settle();
    CHECK(demo.lineText(3, kIngredient).contains(QStringLiteral("ginger")));
}

TEST_CASE("the arrows choose among the foods that fit") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("1 cup celer"));
    QAbstractItemView* list = entry.findChild<QCompleter*>()->popup();
    REQUIRE(list->model()->rowCount() > 1);
    const QString second = list->model()->index(1, 0).data().toString();
    pressKey(*list, Qt::Key_Down);
    pressKey(*list, Qt::Key_Return);
    settle();
    CHECK(second.startsWith(demo.lineText(7, kIngredient)));
}

TEST_CASE("Esc in a cell leaves the line as it was") {
    DemoWindow demo;
    const double before = demo.kcal();
    QWidget& editor = demo.edit(kOil, kAmount);
    typeText(editor, QStringLiteral("6 tbsp"));
    pressKey(editor, Qt::Key_Escape);
    settle();
    CHECK(demo.kcal() == before);
    CHECK(demo.lineText(kOil, kAmount) == QStringLiteral("3 tbsp"));
}

TEST_CASE("a preparation is typed after the food") {
    DemoWindow demo;
    QWidget& editor = demo.edit(3, kIngredient);
    auto& field = static_cast<QLineEdit&>(editor);
    field.selectAll();
    typeText(field, QStringLiteral("garlic, crushed"));
    CHECK(demo.lineText(3, kIngredient).startsWith(QStringLiteral("garlic · crushed")));
    CHECK(demo.draft().undoStack().count() == 1);
}

TEST_CASE("lines are removed and moved by keys, and undo brings them back") {
    DemoWindow demo;
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setFocus();
    view.setCurrentIndex(view.model()->index(0, 0));
    pressKey(view, Qt::Key_Down, Qt::AltModifier);
    CHECK(demo.lineText(1, kIngredient).startsWith(QStringLiteral("prawns")));
    CHECK(view.currentIndex().row() == 1);
    pressKey(view, Qt::Key_Delete);
    CHECK(view.model()->rowCount() == 6);
    pressKey(view, Qt::Key_Z, Qt::ControlModifier);
    pressKey(view, Qt::Key_Z, Qt::ControlModifier);
    CHECK(view.model()->rowCount() == 7);
    CHECK(demo.lineText(0, kIngredient).startsWith(QStringLiteral("prawns")));
}

TEST_CASE("the ingredient table keeps the rules of models while a recipe is edited") {
    DemoWindow demo;
    auto* model = child<QTableView>(demo.window(), "lines").model();
    const QAbstractItemModelTester tester{model,
                                          QAbstractItemModelTester::FailureReportingMode::Warning};
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setCurrentIndex(model->index(1, 0));
    pressKey(view, Qt::Key_Delete);
    demo.draft().undoStack().undo();
    typeText(demo.edit(kOil, kAmount), QStringLiteral("4 tbsp"));
    CHECK(model->rowCount() == 7);
}

TEST_CASE("a kept recipe is offered by its title and used at its newest revision") {
    DemoWindow demo;
    const QString skewers = demo.draft().recipe();
    for (const ShelvedRecipe& recipe : demo.kitchen().recipes())
        if (recipe.title.starts_with("Barley")) demo.open(QString::fromStdString(recipe.id));
    const double batch =
        (*demo.draft().evaluation())[Basis::Batch]->figures[indexOf(Component::ENERC_KCAL)].value;
    const double weight = demo.draft().evaluation()->cooked.eaten.cooked->value();
    demo.kitchen().keep(QStringLiteral("first"));
    REQUIRE(waitUntil([&] { return demo.draft().baseRevision() == 1; }));
    demo.kitchen().settle();
    demo.open(skewers);
    const auto kilocalories = [&] {
        return (*demo.draft().evaluation())[Basis::Batch]
            ->figures[indexOf(Component::ENERC_KCAL)]
            .value;
    };
    const double before = kilocalories();
    auto& entry = child<QLineEdit>(demo.window(), "newLine");
    typeText(entry, QStringLiteral("100 g barley & beet"));
    QAbstractItemView* list = entry.findChild<QCompleter*>()->popup();
    REQUIRE(list->isVisible());
    CHECK(list->model()->index(0, 0).data().toString() ==
          QStringLiteral("Barley & beetroot patties · your recipe, revision 1"));
    pressKey(*list, Qt::Key_Return);
    REQUIRE(waitUntil([&] { return kilocalories() > before + 1; }));
    CHECK(kilocalories() - before == Approx(batch * 100 / weight));
    CHECK(demo.draft().evaluation()->document.foods.back().recipe == "barley-beetroot-patties#1");
    demo.draft().undoStack().undo();
    CHECK(kilocalories() == before);
}

}  // namespace nettare
