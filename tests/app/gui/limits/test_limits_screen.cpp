#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/limits/limits_screen.h"
#include "app/sheet/draft_field.h"
#include "core/nutrition/target.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace nettare {

namespace {

QWidget& limitsOf(DemoWindow& demo) {
    demo.window().showScreen(QStringLiteral("limits"));
    settle();
    return *demo.window().findChild<LimitsScreen*>();
}

void chooseText(QComboBox& box, const QString& text) {
    const int at = box.findText(text);
    REQUIRE(at >= 0);
    box.setCurrentIndex(at);
}

std::size_t targetsOf(DemoWindow& demo) {
    return demo.draft().evaluation()->document.targets.size();
}

}  // namespace

TEST_CASE("a floor on any component is set, judged, changed and taken away") {
    DemoWindow demo;
    QWidget& screen = limitsOf(demo);
    const std::size_t before = targetsOf(demo);
    chooseText(child<QComboBox>(screen, "limitComponent"), QStringLiteral("Protein"));
    chooseText(child<QComboBox>(screen, "limitEnd"), QStringLiteral("at least"));
    typeText(child<QLineEdit>(screen, "limitNumber"), QStringLiteral("5"));
    click(child<QPushButton>(screen, "setLimit"));
    REQUIRE(targetsOf(demo) == before + 1);
    const TargetVerdict& verdict = demo.draft().evaluation()->verdicts.back();
    CHECK(verdict.target.component == Component::PROCNT);
    CHECK(verdict.target.atLeast->text() == "5");
    const auto name = QStringLiteral("limit%1").arg(before).toLatin1();
    auto& number = child<DraftField>(screen, name.constData());
    number.setFocus();
    number.selectAll();
    typeText(number, QStringLiteral("50"));
    CHECK(demo.draft().evaluation()->verdicts.back().state == TargetState::NotMet);
    const auto away = QStringLiteral("removeLimit%1").arg(before).toLatin1();
    click(child<QPushButton>(screen, away.constData()));
    CHECK(targetsOf(demo) == before);
    demo.draft().undoStack().undo();
    CHECK(targetsOf(demo) == before + 1);
    settle();
    keepPicture(demo.window(), QStringLiteral("limits"));
}

TEST_CASE("a limit that is no number is refused in its place") {
    DemoWindow demo;
    QWidget& screen = limitsOf(demo);
    const std::size_t before = targetsOf(demo);
    typeText(child<QLineEdit>(screen, "limitNumber"), QStringLiteral("little"));
    click(child<QPushButton>(screen, "setLimit"));
    CHECK(targetsOf(demo) == before);
    bool told = false;
    for (const QLabel* label : screen.findChildren<QLabel*>())
        told = told || (label->isVisible() && label->text().contains(QStringLiteral("little")));
    CHECK(told);
}

TEST_CASE("an assumption is typed in percent, and an empty field takes its default") {
    DemoWindow demo;
    QWidget& screen = limitsOf(demo);
    auto& field = child<DraftField>(screen, "piece_spread");
    CHECK(field.text() == QStringLiteral("14"));
    field.setFocus();
    field.selectAll();
    typeText(field, QStringLiteral("20"));
    CHECK(demo.draft().evaluation()->document.assumptions.pieceSpread.text() == "0.20");
    field.selectAll();
    pressKey(field, Qt::Key_Delete);
    CHECK(demo.draft().evaluation()->document.assumptions.pieceSpread.text() == "0.14");
}

}  // namespace nettare
