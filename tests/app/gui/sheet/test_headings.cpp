#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/sheet/draft_text.h"

#include <QLineEdit>
#include <QPlainTextEdit>

namespace nettare {

namespace {

QString titleOf(DemoWindow& demo) {
    return QString::fromStdString(*demo.draft().document().find("title")->text());
}

}  // namespace

TEST_CASE("the title is edited where it stands, and undo gives the old one back") {
    DemoWindow demo;
    auto& title = child<QPlainTextEdit>(demo.window(), "title");
    const QString before = titleOf(demo);
    title.setFocus();
    title.selectAll();
    typeText(title, QStringLiteral("Skewers"));
    CHECK(titleOf(demo) == QStringLiteral("Skewers"));
    pressKey(title, Qt::Key_Z, Qt::ControlModifier);
    CHECK(titleOf(demo) == before);
    CHECK(title.toPlainText() == before);
}

TEST_CASE("what the batch makes is typed as one text, words and all") {
    DemoWindow demo;
    auto& makes = child<QLineEdit>(demo.window(), "makes");
    CHECK(makes.text() == QStringLiteral("10 skewers"));
    const double before = demo.kcal();
    makes.selectAll();
    typeText(makes, QStringLiteral("20 sticks"));
    CHECK(demo.kcal() == Approx(before / 2));
    const Json* words = demo.draft().document().find("makes");
    CHECK(*words->find("piece")->text() == "stick");
    CHECK(*words->find("plural")->text() == "sticks");
    CHECK(demo.draft().undoStack().count() == 1);
}

TEST_CASE("a portion is typed in pieces or in grams") {
    DemoWindow demo;
    auto& portion = child<QLineEdit>(demo.window(), "portion");
    const double before = demo.kcal();
    portion.selectAll();
    typeText(portion, QStringLiteral("3 skewers"));
    CHECK(demo.kcal() == Approx(before * 1.5));
    portion.selectAll();
    typeText(portion, QStringLiteral("200 g"));
    CHECK(*demo.draft().document().find("portion")->find("grams")->text() == "200");
}

TEST_CASE("a ceiling is changed, taken away and set again") {
    DemoWindow demo;
    auto& ceiling = child<QLineEdit>(demo.window(), "ceiling");
    CHECK(ceiling.text() == QStringLiteral("150 kcal"));
    ceiling.selectAll();
    typeText(ceiling, QStringLiteral("120"));
    CHECK(demo.draft().evaluation()->verdicts.front().target.atMost->text() == "120");
    ceiling.selectAll();
    pressKey(ceiling, Qt::Key_Backspace);
    CHECK(demo.draft().evaluation()->verdicts.empty());
    typeText(ceiling, QStringLiteral("70 kcal per skewer"));
    REQUIRE(demo.draft().evaluation()->verdicts.size() == 1);
    CHECK(demo.draft().evaluation()->verdicts.front().target.per == Basis::Piece);
}

TEST_CASE("a refused text stays in its field until Esc takes it back") {
    DemoWindow demo;
    auto& ceiling = child<QLineEdit>(demo.window(), "ceiling");
    ceiling.selectAll();
    typeText(ceiling, QStringLiteral("many"));
    CHECK(ceiling.property("refused").toBool());
    CHECK(ceiling.text() == QStringLiteral("many"));
    CHECK_FALSE(ceiling.accessibleDescription().isEmpty());
    pressKey(ceiling, Qt::Key_Escape);
    CHECK(ceiling.text() == QStringLiteral("150 kcal"));
    CHECK_FALSE(ceiling.property("refused").toBool());
}

TEST_CASE("steps are added, edited, moved and removed by keys") {
    DemoWindow demo;
    auto& entry = child<QLineEdit>(demo.window(), "newStep");
    typeText(entry, QStringLiteral("Serve at once."));
    pressKey(entry, Qt::Key_Return);
    settle();
    auto steps = demo.window().findChildren<DraftText*>();
    REQUIRE(steps.size() == 5);  // the title is one of them
    DraftText* last = steps.back();
    CHECK(last->toPlainText() == QStringLiteral("Serve at once."));
    last->setFocus();
    pressKey(*last, Qt::Key_Up, Qt::AltModifier);
    const Json::Array& all = *demo.draft().document().find("steps")->items();
    CHECK(*all[2].find("text")->text() == "Serve at once.");
    pressKey(*steps[3], Qt::Key_Delete, Qt::AltModifier);
    CHECK(demo.draft().document().find("steps")->items()->size() == 3);
}

}  // namespace nettare
