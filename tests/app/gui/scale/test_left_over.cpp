#include "app/gui/support/gui.h"
#include "app/gui/support/weigh.h"
#include "app/gui/window/demo_window.h"
#include "app/scale/step_lines.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QToolButton>

namespace nettare {

namespace {

QWidget& leftOverPopup(DemoWindow& demo) {
    return child<QWidget>(demo.window(), "leftOverPopup");
}

QString noteText(DemoWindow& demo) {
    return child<QLabel>(demo.window(), "note").text();
}

QString leftText(DemoWindow& demo) {
    return child<QPushButton>(demo.window(), "leftInBowl").text();
}

/// Opens what is left over from the row below the title, then the choice, by the keyboard.
QWidget& askWhatItIs(DemoWindow& demo) {
    click(child<QPushButton>(demo.window(), "leftInBowl"));
    auto& button = child<QPushButton>(demo.window(), "leftOver");
    REQUIRE(button.isVisible());
    button.setFocus();
    pressKey(button, Qt::Key_Space);
    QWidget& popup = leftOverPopup(demo);
    REQUIRE(waitUntil([&] { return popup.isVisible(); }));
    return popup;
}

const Json::Array& residuesOf(DemoWindow& demo) {
    static const Json::Array none;
    const Json* residues = demo.draft().document().find("residues");
    return residues == nullptr ? none : *residues->items();
}

/// The choice of that kind, by its button.
void chooseKind(DemoWindow& demo, const char* name) {
    click(child<QRadioButton>(leftOverPopup(demo), name));
}

}  // namespace

TEST_CASE("a recipe without residues gets a mixture by the keyboard, and undo takes it off") {
    DemoWindow demo;
    openPatties(demo);
    CHECK(leftText(demo) == QStringLiteral("not weighed"));
    QWidget& popup = askWhatItIs(demo);
    keepPicture(popup, QStringLiteral("left-over-popup"));
    CHECK(child<QRadioButton>(popup, "leftMixture").hasFocus());
    CHECK(child<QComboBox>(popup, "mixedAt").currentText().contains(QStringLiteral("step 2")));
    auto& barley = child<QCheckBox>(popup, "mix-barley");
    CHECK(barley.isChecked());
    barley.setFocus();
    pressKey(barley, Qt::Key_Space);
    CHECK_FALSE(barley.isChecked());
    pressKey(barley, Qt::Key_Down);
    CHECK(child<QCheckBox>(popup, "mix-beetroot").hasFocus());
    pressKey(child<QCheckBox>(popup, "mix-beetroot"), Qt::Key_Return);
    REQUIRE(waitUntil([&] { return !popup.isVisible(); }));
    auto& gross = child<QLineEdit>(demo.window(), "gross");
    REQUIRE(waitUntil([&] { return gross.hasFocus(); }));

    const double before = demo.kcal();
    typeText(gross, QStringLiteral("50"));
    CHECK(noteText(demo).startsWith(QStringLiteral("50.0 g of ")));
    CHECK(noteText(demo).contains(QStringLiteral("beetroot, onion, egg")));
    CHECK_FALSE(noteText(demo).contains(QStringLiteral("barley")));
    gross.clear();
    recordShown(demo, QStringLiteral("50"));
    CHECK(demo.kcal() < before);
    REQUIRE(residuesOf(demo).size() == 1);
    CHECK(residuesOf(demo)[0].find("mixture")->items()->size() == 8);
    CHECK(*residuesOf(demo)[0].find("mixed_at")->text() == "2");
    CHECK(leftText(demo) == QStringLiteral("50.0 g beetroot, onion and 6 more"));
    demo.draft().undoStack().undo();
    CHECK(demo.kcal() == before);
    CHECK(leftText(demo) == QStringLiteral("not weighed"));
}

TEST_CASE("the marinade weighed last is what is left in the bowl, as one sentence says") {
    DemoWindow demo;
    click(child<QPushButton>(demo.window(), "leftInBowl"));
    auto& purpose = child<QComboBox>(demo.window(), "purpose");
    CHECK(purpose.currentText() == QStringLiteral("left over: olive oil, garlic and 3 more"));
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("20"));
    CHECK(noteText(demo).startsWith(QStringLiteral("20.0 g of 6")));
    CHECK(noteText(demo).contains(QStringLiteral(
        "olive oil, garlic, lemon juice, smoked paprika, fine salt lose the same share")));
    keepPicture(demo.window(), QStringLiteral("left-over-strip"));
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("0"));
    CHECK(noteText(demo).contains(QStringLiteral("is left, but only")));
}

TEST_CASE("several residues stand below the title, and each is taken off on its own") {
    DemoWindow demo;
    QWidget& popup = askWhatItIs(demo);
    typeText(child<QLineEdit>(popup, "called"), QStringLiteral("marinade"));
    pressKey(child<QLineEdit>(popup, "called"), Qt::Key_Return);
    recordShown(demo, QStringLiteral("12.5"));
    CHECK(leftText(demo) == QStringLiteral("12.5 g marinade"));
    REQUIRE(residuesOf(demo).size() == 1);

    (void)askWhatItIs(demo);
    chooseKind(demo, "leftWater");
    CHECK(child<QLabel>(popup, "leftOverSentence")
              .text()
              .startsWith(QStringLiteral("Nothing but water")));
    child<QLineEdit>(popup, "called").clear();
    pressKey(popup, Qt::Key_Escape);
    recordShown(demo, QStringLiteral("40"));
    REQUIRE(residuesOf(demo).size() == 2);
    auto& second = child<QPushButton>(demo.window(), "left-1");
    CHECK(second.text() == QStringLiteral("40.0 g cooking water"));
    keepPicture(demo.window(), QStringLiteral("left-over-two"));

    click(child<QToolButton>(demo.window(), "takeOffLeft-0"));
    CHECK(leftText(demo) == QStringLiteral("40.0 g cooking water"));
    CHECK_FALSE(second.isVisible());
    demo.draft().undoStack().undo();
    CHECK(leftText(demo) == QStringLiteral("12.5 g marinade"));
    CHECK(second.isVisible());
}

TEST_CASE("what ran off is a food of its own, brought from the table") {
    DemoWindow demo;
    (void)askWhatItIs(demo);
    chooseKind(demo, "leftDrip");
    QWidget& popup = leftOverPopup(demo);
    CHECK(child<QLabel>(popup, "leftOverSentence")
              .text()
              .startsWith(QStringLiteral("Choose the food that ran off")));
    auto& food = child<QLineEdit>(popup, "drip");
    typeText(food, QStringLiteral("butter"));
    keepPicture(popup, QStringLiteral("left-over-drip"));
    REQUIRE(QApplication::activePopupWidget() != nullptr);
    pressKey(*QApplication::activePopupWidget(), Qt::Key_Return);
    REQUIRE(waitUntil([&] { return QApplication::activePopupWidget() == &popup; }));
    CHECK_FALSE(child<QLabel>(popup, "leftOverSentence")
                    .text()
                    .startsWith(QStringLiteral("Choose the food")));
    pressKey(popup, Qt::Key_Escape);
    const double before = demo.kcal();
    const std::size_t foods = demo.draft().document().find("foods")->items()->size();
    recordShown(demo, QStringLiteral("10"));
    CHECK(demo.kcal() < before);
    CHECK(demo.draft().document().find("foods")->items()->size() == foods + 1);
    CHECK(residuesOf(demo)[1].find("drip") != nullptr);
    CHECK(child<QCheckBox>(demo.window(), "addTo").text() == QStringLiteral("Add to 10.0 g"));
    demo.draft().undoStack().undo();
    CHECK(demo.kcal() == before);
    CHECK(demo.draft().document().find("foods")->items()->size() == foods);
    CHECK(child<QComboBox>(demo.window(), "purpose")
              .currentText()
              .contains(QStringLiteral("utter"), Qt::CaseInsensitive));
}

TEST_CASE("a step ticks the lines that it names, and the residue says at which they were mixed") {
    DemoWindow demo;
    QWidget& popup = askWhatItIs(demo);
    auto& step = child<QComboBox>(popup, "mixedAt");
    step.setFocus();
    pressKey(step, Qt::Key_Down);
    pressKey(step, Qt::Key_Down);
    CHECK(step.currentText().startsWith(QStringLiteral("as mixed at step 2: Turn the prawns")));
    CHECK(child<QCheckBox>(popup, "mix-prawns").isChecked());
    CHECK(child<QCheckBox>(popup, "mix-oil").isChecked());
    CHECK_FALSE(child<QCheckBox>(popup, "mix-garlic").isChecked());
    pressKey(step, Qt::Key_Return);
    recordShown(demo, QStringLiteral("30"));
    REQUIRE(residuesOf(demo).size() == 2);
    CHECK(*residuesOf(demo)[1].find("mixed_at")->text() == "2");
    CHECK(residuesOf(demo)[1].find("mixture")->items()->size() == 3);
}

TEST_CASE("what nobody knows makes the figures an interval") {
    DemoWindow demo;
    (void)askWhatItIs(demo);
    chooseKind(demo, "leftUnknown");
    pressKey(leftOverPopup(demo), Qt::Key_Escape);
    CHECK(noteText(demo) == QStringLiteral("Nobody knows which lines it is of: figures become an "
                                           "interval, from the leanest line to the richest."));
    const auto width = [&] {
        const Figures& portion = (*demo.draft().evaluation())[Basis::Portion].value();
        return intervalOf(portion[Component::ENERC_KCAL]).halfWidth;
    };
    const double before = width();
    recordShown(demo, QStringLiteral("50"));
    CHECK(width() > before);
    CHECK(child<QPushButton>(demo.window(), "left-1").text() ==
          QStringLiteral("50.0 g of unknown make-up"));
}

TEST_CASE("nothing is recorded while it is not said what is left over") {
    DemoWindow demo;
    (void)askWhatItIs(demo);
    for (QCheckBox* line : leftOverPopup(demo).findChildren<QCheckBox*>())
        if (line->isChecked()) pressKey(*line, Qt::Key_Space);
    pressKey(leftOverPopup(demo), Qt::Key_Escape);
    typeText(child<QLineEdit>(demo.window(), "gross"), QStringLiteral("10"));
    CHECK(noteText(demo) == QStringLiteral("Tick the lines that were mixed."));
    CHECK_FALSE(child<QPushButton>(demo.window(), "record").isEnabled());
}

TEST_CASE("everything in the choice of what is left over has a name") {
    DemoWindow demo;
    QWidget& popup = askWhatItIs(demo);
    for (const QWidget* radio : popup.findChildren<QRadioButton*>()) {
        chooseKind(demo, radio->objectName().toLatin1().constData());
        for (QWidget* widget : popup.findChildren<QWidget*>()) {
            if (!widget->isVisible() || (widget->focusPolicy() & Qt::TabFocus) == 0) continue;
            INFO(widget->objectName().toStdString());
            CHECK_FALSE(spokenOf(*widget).name.isEmpty());
        }
    }
    pressKey(popup, Qt::Key_Escape);
    CHECK_FALSE(popup.isVisible());
}

TEST_CASE("a step names its lines by the last word of their foods") {
    DemoWindow demo;
    const Json& document = demo.draft().document();
    CHECK(linesNamedIn(document, "Stir oil, garlic, lemon juice, paprika and salt in a bowl.") ==
          std::vector<std::string>{"oil", "garlic", "lemon", "paprika", "salt"});
    CHECK(linesNamedIn(document, "Peel a prawn; salted water is for later.") ==
          std::vector<std::string>{"prawns"});
    CHECK(linesNamedIn(document, "Mix everything.").size() == 7);
    CHECK(linesNamedIn(document, "Serve at once.").empty());
}

}  // namespace nettare
