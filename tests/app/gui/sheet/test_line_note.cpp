#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/sheet/line_rows.h"
#include "app/widgets/message_line.h"

#include <QAbstractItemView>
#include <QAction>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kPrawnsRow = 0;
constexpr int kOilRow = 2;
constexpr int kAmountCell = static_cast<int>(LineColumn::Amount);
constexpr int kGramsCell = static_cast<int>(LineColumn::Grams);
constexpr int kWayCell = static_cast<int>(LineColumn::Way);

void goToLine(DemoWindow& demo, int row) {
    auto& view = child<QTableView>(demo.window(), "lines");
    view.setFocus();
    view.setCurrentIndex(view.model()->index(row, kAmountCell));
    settle();
}

QString noteSentence(DemoWindow& demo) {
    return child<QLabel>(demo.window(), "waySentence").text();
}

void triggerCommand(DemoWindow& demo, const char* name) {
    auto* action = demo.window().findChild<QAction*>(QLatin1String{name});
    REQUIRE(action != nullptr);
    action->trigger();
    settle();
}

QLineEdit& fieldNamed(DemoWindow& demo, const char* name) {
    return child<QLineEdit>(demo.window(), name);
}

/// Types a line at the foot of the table and presses Enter.
void writeNewLine(DemoWindow& demo, const QString& line) {
    QLineEdit& entry = fieldNamed(demo, "newLine");
    typeText(entry, line);
    QAbstractItemView* list = entry.findChild<QCompleter*>()->popup();
    if (list->isVisible()) pressKey(*list, Qt::Key_Escape);
    pressKey(entry, Qt::Key_Return);
    settle();
}

}  // namespace

TEST_CASE("the note below the table says how the current line's grams were found") {
    DemoWindow demo;
    goToLine(demo, kPrawnsRow);
    const QString prawns = noteSentence(demo);
    CHECK(prawns.contains(QStringLiteral("36")));
    goToLine(demo, kOilRow);
    CHECK(noteSentence(demo) != prawns);
    CHECK_FALSE(noteSentence(demo).isEmpty());
    keepPicture(demo.window(), QStringLiteral("line_note"));
}

TEST_CASE("F4 takes the next way to grams, and undo gives the first one back") {
    DemoWindow demo;
    goToLine(demo, kOilRow);
    const QString weighed = demo.lineText(kOilRow, kGramsCell);
    REQUIRE(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("weighed")));
    triggerCommand(demo, "nextWay");
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("label")));
    CHECK(demo.lineText(kOilRow, kGramsCell) != weighed);
    triggerCommand(demo, "wayBefore");
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("weighed")));
    demo.draft().undoStack().undo();
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("label")));
    demo.draft().undoStack().undo();
    CHECK(demo.lineText(kOilRow, kGramsCell) == weighed);
}

TEST_CASE("a worse way that was chosen is told, and one key takes the better one") {
    DemoWindow demo;
    goToLine(demo, kOilRow);
    triggerCommand(demo, "nextWay");
    const auto& finding = child<MessageLine>(demo.window(), "lineFinding");
    CHECK(finding.isVisible());
    CHECK(child<QPushButton>(child<QWidget>(demo.window(), "lineNote"), "messageAction").text() ==
          QStringLiteral("Take weighed (F9)"));
    keepPicture(demo.window(), QStringLiteral("line_finding"));
    triggerCommand(demo, "betterWay");
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("weighed")));
}

TEST_CASE("grams are assumed with half-width and reason, and refused without a reason") {
    DemoWindow demo;
    goToLine(demo, kOilRow);
    triggerCommand(demo, "assume");
    QLineEdit& grams = fieldNamed(demo, "assumedGrams");
    CHECK(grams.hasFocus());
    typeText(grams, QStringLiteral("30"));
    typeText(fieldNamed(demo, "assumedWithin"), QStringLiteral("4"));
    pressKey(fieldNamed(demo, "assumedWithin"), Qt::Key_Return);
    CHECK(grams.isVisible());
    const auto says = demo.window().findChildren<QLabel*>();
    CHECK(std::ranges::any_of(says, [](const QLabel* label) {
        return label->isVisible() && label->text().startsWith(QStringLiteral("Say why: "));
    }));
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("weighed")));
    keepPicture(demo.window(), QStringLiteral("assume_refused"));
    typeText(fieldNamed(demo, "assumedReason"), QStringLiteral("by eye"));
    pressKey(fieldNamed(demo, "assumedReason"), Qt::Key_Return);
    CHECK_FALSE(grams.isVisible());
    CHECK(demo.lineText(kOilRow, kWayCell).startsWith(QStringLiteral("assumed")));
    CHECK(demo.draft().undoStack().canUndo());
}

TEST_CASE("oz is asked, and the answer adds the line") {
    DemoWindow demo;
    const auto& view = child<QTableView>(demo.window(), "lines");
    const int before = view.model()->rowCount();
    writeNewLine(demo, QStringLiteral("8 oz milk"));
    auto& question = child<QWidget>(demo.window(), "meaningQuestion");
    REQUIRE(question.isVisible());
    CHECK(view.model()->rowCount() == before);
    keepPicture(demo.window(), QStringLiteral("oz_asked"));
    const auto answers = question.findChildren<QPushButton*>();
    REQUIRE(answers.size() == 2);
    CHECK(answers[0]->hasFocus());
    pressKey(*answers[0], Qt::Key_Right);
    CHECK(demo.window().focusWidget() == answers[1]);
    pressKey(*answers[1], Qt::Key_Space);
    settle();
    CHECK_FALSE(question.isVisible());
    REQUIRE(view.model()->rowCount() == before + 1);
    CHECK(demo.lineText(before, kAmountCell) == QStringLiteral("8 fl oz"));
}

TEST_CASE("Esc leaves a question, and the line is as it was typed") {
    DemoWindow demo;
    writeNewLine(demo, QStringLiteral("8 oz milk"));
    auto& question = child<QWidget>(demo.window(), "meaningQuestion");
    const auto answers = question.findChildren<QPushButton*>();
    REQUIRE(answers.size() == 2);
    pressKey(*answers[0], Qt::Key_Escape);
    CHECK_FALSE(question.isVisible());
    CHECK(fieldNamed(demo, "newLine").text() == QStringLiteral("8 oz milk"));
    CHECK(demo.window().focusWidget() == &fieldNamed(demo, "newLine"));
}

TEST_CASE("salt to taste is a line that the figures say they leave out") {
    DemoWindow demo;
    const auto& view = child<QTableView>(demo.window(), "lines");
    const int before = view.model()->rowCount();
    const double kcal = demo.kcal();
    writeNewLine(demo, QStringLiteral("sugar to taste"));
    REQUIRE(view.model()->rowCount() == before + 1);
    CHECK(demo.lineText(before, kAmountCell) == QStringLiteral("to taste"));
    CHECK(demo.lineText(before, kWayCell) == QStringLiteral("left out"));
    CHECK_FALSE(demo.draft().failure().has_value());
    CHECK(demo.kcal() == kcal);
}

TEST_CASE("a line without a way to grams says so, and its grams can be assumed there") {
    DemoWindow demo;
    const auto& view = child<QTableView>(demo.window(), "lines");
    const int before = view.model()->rowCount();
    writeNewLine(demo, QStringLiteral("1 handful milk"));
    REQUIRE(view.model()->rowCount() == before + 1);
    CHECK(demo.draft().failure().has_value());
    CHECK(noteSentence(demo).contains(QStringLiteral("handful")));
    triggerCommand(demo, "assume");
    typeText(fieldNamed(demo, "assumedGrams"), QStringLiteral("20"));
    typeText(fieldNamed(demo, "assumedWithin"), QStringLiteral("10"));
    typeText(fieldNamed(demo, "assumedReason"), QStringLiteral("by hand"));
    pressKey(fieldNamed(demo, "assumedReason"), Qt::Key_Return);
    CHECK_FALSE(demo.draft().failure().has_value());
    CHECK(demo.lineText(before, kWayCell).startsWith(QStringLiteral("assumed")));
}

TEST_CASE("a volume of a food without measures is offered its group's density, to be stated") {
    DemoWindow demo;
    const auto& view = child<QTableView>(demo.window(), "lines");
    const int before = view.model()->rowCount();
    // USDA SR28 has chia seeds (12006) by the ounce only.
    writeNewLine(demo, QStringLiteral("2 tbsp chia seeds"));
    REQUIRE(view.model()->rowCount() == before + 1);
    CHECK(demo.draft().failure().has_value());
    auto& offer = child<QPushButton>(demo.window(), "stateDensity");
    REQUIRE(offer.isVisible());
    CHECK(offer.text() == QStringLiteral("density of seed, 0.61 g/ml"));
    offer.click();
    settle();
    CHECK_FALSE(demo.draft().failure().has_value());
    CHECK(demo.lineText(before, kWayCell).startsWith(QStringLiteral("by density")));
    CHECK_FALSE(offer.isVisible());
    demo.draft().undoStack().undo();
    CHECK(demo.draft().failure().has_value());
}

}  // namespace nettare
