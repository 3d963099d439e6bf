#include "app/gui/pantry/label_typing.h"
#include "app/gui/pantry/pantry_window.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/pantry/food_list_model.h"
#include "app/pantry/label_memory.h"
#include "app/theme/user_settings.h"
#include "app/widgets/basis_switch.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

#include <iostream>

namespace nettare {

// Counted is every key but those that type what the package prints: digits, the letters of the name
// and of the measure. So Tab, Enter, arrows, function keys and shortcuts count, one each, and with
// the way into the form and out of it.
TEST_CASE("a label of twelve amounts is typed by keyboard in under 60 keys beyond its content") {
    userSettings()->clear();
    PantryWindow pantry;
    QElapsedTimer clock;
    clock.start();
    LabelTyping typing{pantry};
    typing.openForm();
    typing.write(QStringLiteral("Oat crackers, Mill Lane"));
    typing.enter();
    typing.write(QStringLiteral("about 6"));
    typing.enter();
    typing.write(QStringLiteral("5 crackers"));
    typing.enter();
    typing.write(QStringLiteral("30"));
    typing.enter();
    for (const char* amount : {"130", "4.5", "0.5", "0", "0", "210", "20", "2", "3", "2", "3"}) {
        typing.write(QString::fromLatin1(amount));
        typing.enter();
    }
    typing.write(QStringLiteral("0"));
    typing.save();
    pantry.rest();
    const auto stored_ms = clock.elapsed();
    std::cout << "label form to stored version: " << typing.keys() << " keys beyond "
              << typing.letters() << " of content, " << stored_ms << " ms\n";
    CHECK(typing.keys() < 60);
    CHECK(pantry.shown() == QStringLiteral("Oat crackers, Mill Lane"));
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    const OwnFood& own = pantry.kitchen().ownFoods().all().front().current;
    REQUIRE(own.food.label);
    CHECK(own.food.label->amounts.size() == 12);
    CHECK(*own.food.label->printed(Component::NA) == "210");
    CHECK(own.food.label->householdUnit == "crackers");
    CHECK(own.food.profile[Component::ENERC_KCAL].value() == Approx(130.0 * 100 / 30));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-card"));
}

TEST_CASE("an empty label form begins with rules, amounts per and day as they mostly are") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    CHECK(child<BasisSwitch>(pantry.screen(), "labelRules").index() == 0);
    CHECK(child<QLineEdit>(pantry.screen(), "labelDate").text().size() == 10);
    CHECK(child<QLineEdit>(pantry.screen(), "labelSpread").text().isEmpty());
    CHECK(child<QLineEdit>(pantry.screen(), "labelName").hasFocus());
    CHECK(unnamedFocusables(pantry.screen()).isEmpty());
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-empty"));
    // One key takes the rules of the other side of the sea; its lines come with them.
    typing.press(Qt::Key_F2);
    CHECK(pantry.screen().findChild<QLineEdit*>(QStringLiteral("label_NACL")) != nullptr);
    CHECK(pantry.screen().findChild<QLineEdit*>(QStringLiteral("label_CHOCDF")) == nullptr);
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-eu"));
}

TEST_CASE("the key of the other rules leaves the focus in the same line, or in the first one") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("60"));
    typing.put("label_FAT", QStringLiteral("1"));
    typing.press(Qt::Key_F2);
    CHECK(child<QLineEdit>(pantry.screen(), "label_FAT").hasFocus());
    CHECK(child<QLineEdit>(pantry.screen(), "label_FAT").text() == QStringLiteral("1"));
    typing.press(Qt::Key_F2);
    // The other rules print no sodium.
    child<QLineEdit>(pantry.screen(), "label_NA").setFocus();
    typing.press(Qt::Key_F2);
    auto* const focus = QApplication::focusWidget();
    REQUIRE(focus != nullptr);
    CHECK(focus->objectName().startsWith(QStringLiteral("label_")));
    typing.press(Qt::Key_F2);
    typing.press(Qt::Key_F9);
    CHECK(child<QLineEdit>(pantry.screen(), "label_CHOCDF").text() == QStringLiteral("6"));
    QWidget* const before = QApplication::focusWidget();
    typing.enter();
    CHECK(QApplication::focusWidget() != before);
    typing.save();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().size() == 1);
}

TEST_CASE("beside each amount stands what it may stand for") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.put("labelSize", QStringLiteral("30"));
    typing.put("label_ENERC_KCAL", QStringLiteral("100"));
    CHECK(typing.standsFor("label_ENERC_KCAL") == QStringLiteral("95–105"));
    typing.put("label_FAT", QStringLiteral("0"));
    CHECK(typing.standsFor("label_FAT") == QStringLiteral("< 0.5"));
    // On its way to 140 a 1 is not called wrong; what is left in the field is.
    typing.put("label_NA", QStringLiteral("1"));
    CHECK(typing.standsFor("label_NA").isEmpty());
    typing.enter();
    CHECK(typing.standsFor("label_NA") == QStringLiteral("never printed so"));
    typing.put("label_NA", QStringLiteral("salty"));
    typing.enter();
    CHECK(typing.standsFor("label_NA") == QStringLiteral("not an amount"));
}

TEST_CASE("a label that cannot be right is asked about, and one key takes the likely slip") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("60"));
    auto& bar = child<QWidget>(pantry.screen(), "labelFinding");
    REQUIRE(bar.isVisible());
    CHECK(child<QLabel>(bar, "findingTitle").text() == QStringLiteral("These cannot all be right"));
    CHECK(child<QPushButton>(bar, "takeSlip").text() == QStringLiteral("Use 6 g (F9)"));
    auto& field = child<QLineEdit>(pantry.screen(), "label_CHOCDF");
    CHECK(field.property("refused").toBool());
    CHECK_FALSE(field.actions().isEmpty());
    CHECK(spokenOf(field).description.startsWith(QStringLiteral("Question: These cannot")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-finding"));
    // Nothing is saved before it is answered, and nothing is lost.
    typing.save();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().empty());
    CHECK(child<QLabel>(pantry.screen(), "labelRefusal").isVisible());
    typing.press(Qt::Key_F9);
    CHECK(field.text() == QStringLiteral("6"));
    CHECK_FALSE(bar.isVisible());
    CHECK_FALSE(field.property("refused").toBool());
    typing.save();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().size() == 1);
}

TEST_CASE("what the cook calls as printed is remembered with the label") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("60"));
    typing.press(Qt::Key_F9, Qt::ShiftModifier);
    CHECK_FALSE(child<QWidget>(pantry.screen(), "labelFinding").isVisible());
    typing.save();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    const OwnFood& own = pantry.kitchen().ownFoods().all().front().current;
    CHECK(own.food.label->assents.size() == 1);
    // The next pack asks again only where something of it was changed.
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    CHECK_FALSE(child<QWidget>(pantry.screen(), "labelFinding").isVisible());
}

TEST_CASE("what weighs more than its serving is not called as printed") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("600"));
    auto& bar = child<QWidget>(pantry.screen(), "labelFinding");
    REQUIRE(bar.isVisible());
    CHECK_FALSE(child<QPushButton>(bar, "asPrinted").isVisible());
    CHECK(child<QLabel>(bar, "findingSentence")
              .text()
              .contains(QStringLiteral("No food is so: correct it, or leave that line out.")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-impossible"));
    typing.press(Qt::Key_F9, Qt::ShiftModifier);
    CHECK(bar.isVisible());
    typing.press(Qt::Key_F9);
    CHECK_FALSE(bar.isVisible());
}

TEST_CASE("a new pack is a new version that shows what changed, and undo takes it back") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.save();
    pantry.rest();
    auto& adjust = child<QPushButton>(pantry.screen(), "adjustFood");
    CHECK(adjust.text() == QStringLiteral("New pack…"));
    click(adjust);
    CHECK(child<QLabel>(pantry.screen(), "labelAbout").text() ==
          QStringLiteral("United States · new pack, version 2"));
    typing.put("label_PROCNT", QStringLiteral("17"));
    typing.enter();
    CHECK(typing.standsFor("label_PROCNT").contains(QStringLiteral("was ")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-new-pack"));
    typing.save();
    pantry.rest();
    const auto& own = pantry.kitchen().ownFoods().all().front();
    CHECK(own.versions == 2);
    CHECK(*own.current.food.label->printed(Component::PROCNT) == "17");
    CHECK(pantry.cell("labelVersions", 0, 0) == QStringLiteral("version 2"));
    CHECK(pantry.cell("labelVersions", 1, 0) == QStringLiteral("version 1"));
    const int protein = pantry.rowOf("labelLines", QStringLiteral("Protein"));
    REQUIRE(protein >= 0);
    CHECK(pantry.cell("labelLines", protein, 1) == QStringLiteral("17 g"));
    CHECK(pantry.cell("labelLines", protein, 3) == QStringLiteral("10 g"));
    CHECK(child<QLabel>(pantry.screen(), "labelBasis")
              .text()
              .startsWith(QStringLiteral("United States, per serving ")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-versions"));
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier);
    pantry.rest();
    const auto& back = pantry.kitchen().ownFoods().all().front();
    CHECK(*back.current.food.label->printed(Component::PROCNT) == "18");
    CHECK(back.versions == 2);
}

TEST_CASE("what is typed while a label is being saved is not taken as saved") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    auto& note = child<QLineEdit>(pantry.screen(), "labelNote");
    pressKey(note, Qt::Key_S, Qt::ControlModifier);
    note.setText(QStringLiteral("lid torn"));
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    CHECK(pantry.kitchen().ownFoods().all().front().current.origin.note.empty());
    CHECK(note.isVisible());
    CHECK(note.text() == QStringLiteral("lid torn"));
    CHECK(child<QLabel>(pantry.screen(), "labelRefusal").text() ==
          QStringLiteral("Version 1 is saved. What was typed since then is not."));
    typing.put("labelNote", QStringLiteral("lid torn"));
    typing.save();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    CHECK(pantry.kitchen().ownFoods().all().front().versions == 2);
    CHECK(pantry.kitchen().ownFoods().all().front().current.origin.note == "lid torn");
}

TEST_CASE("a labelled food says so in the list and in the head of the pantry") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.save();
    pantry.rest();
    pantry.search(QStringLiteral("thick yoghurt"));
    CHECK(pantry.listed().front().startsWith(QStringLiteral("Thick yoghurt | label")));
    const auto* model = child<QListView>(pantry.screen(), "foods").model();
    CHECK(model->index(0, 0).data(FoodListModel::LabelRole).toBool());
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-list"));
}

TEST_CASE("what is wrong in a label is said in its place and keeps what was typed") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    auto& refusal = child<QLabel>(pantry.screen(), "labelRefusal");
    typing.save();
    CHECK(refusal.text() == QStringLiteral("Name: the text is empty; write what is meant."));
    CHECK(child<QLineEdit>(pantry.screen(), "labelName").hasFocus());
    typing.put("labelName", QStringLiteral("Oat drink"));
    typing.put("label_ENERC_KCAL", QStringLiteral("100"));
    typing.save();
    CHECK(refusal.text() == QStringLiteral("the label of Oat drink gives no size of its serving; "
                                           "add its grams or millilitres as printed."));
    CHECK(child<QLineEdit>(pantry.screen(), "labelSize").hasFocus());
    typing.put("labelSize", QStringLiteral("240 mL"));
    CHECK(child<QLineEdit>(pantry.screen(), "labelDensity").isVisible());
    // The unit moves on to the choice beside the field.
    typing.enter();
    CHECK(child<QLineEdit>(pantry.screen(), "labelSize").text() == QStringLiteral("240"));
    CHECK(child<BasisSwitch>(pantry.screen(), "labelSizeUnit").index() == 1);
    typing.save();
    CHECK(
        refusal.text().startsWith(QStringLiteral("the label of Oat drink speaks of millilitres")));
    CHECK(child<QLineEdit>(pantry.screen(), "labelDensity").hasFocus());
    typing.put("labelDensity", QStringLiteral("1.03"));
    typing.put("labelSpread", QStringLiteral("five"));
    typing.save();
    CHECK(refusal.text().startsWith(QStringLiteral("Declaration spread: “five” is no decimal")));
    CHECK(child<QLineEdit>(pantry.screen(), "labelSpread").hasFocus());
}

TEST_CASE("a label that is not saved stays when another food or screen is looked at") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.put("labelName", QStringLiteral("Thick yoghurt"));
    typing.press(Qt::Key_Escape);
    auto& make = child<QPushButton>(pantry.screen(), "newLabel");
    CHECK(make.text() == QStringLiteral("Go on with the label"));
    pantry.search(QStringLiteral("fennel bulb raw"));
    CHECK(pantry.shown() == QStringLiteral("fennel bulb, raw"));
    pantry.demo().window().showScreen(QStringLiteral("sheet"));
    pantry.demo().window().showScreen(QStringLiteral("pantry"));
    click(make);
    CHECK(child<QLineEdit>(pantry.screen(), "labelName").text() == QStringLiteral("Thick yoghurt"));
    CHECK(child<QLineEdit>(pantry.screen(), "labelName").isVisible());
    click(child<QPushButton>(pantry.screen(), "dropLabel"));
    CHECK(make.text() == QStringLiteral("New label"));
}

TEST_CASE("a label that is not saved when the window closes is there when its kitchen is opened") {
    userSettings()->clear();
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("mill lane.nettare"));
    {
        PantryWindow pantry;
        pantry.kitchen().keepKitchenAs(path);
        pantry.rest();
        LabelTyping typing{pantry};
        typing.openForm();
        typing.put("labelName", QStringLiteral("Thick yoghurt"));
        typing.put("label_FAT", QStringLiteral("0"));
    }
    ReopenedPantry reopened{path};
    PantryScreen& screen = reopened.screen();
    auto& make = child<QPushButton>(screen, "newLabel");
    CHECK(make.text() == QStringLiteral("Go on with the label"));
    click(make);
    CHECK(child<QLineEdit>(screen, "labelName").text() == QStringLiteral("Thick yoghurt"));
    CHECK(child<QLineEdit>(screen, "label_FAT").text() == QStringLiteral("0"));
    click(child<QPushButton>(screen, "dropLabel"));
    CHECK(make.text() == QStringLiteral("New label"));
}

TEST_CASE("a label that is not saved in one kitchen stays while one is typed in another") {
    userSettings()->clear();
    const QTemporaryDir folder;
    const QString mill = folder.filePath(QStringLiteral("mill lane.nettare"));
    const QString harbour = folder.filePath(QStringLiteral("harbour.nettare"));
    for (const QString& path : {mill, harbour}) {
        PantryWindow pantry;
        pantry.kitchen().keepKitchenAs(path);
        pantry.rest();
        LabelTyping typing{pantry};
        typing.openForm();
        typing.put("labelName",
                   path == mill ? QStringLiteral("Thick yoghurt") : QStringLiteral("Oat crackers"));
        if (path == harbour) click(child<QPushButton>(pantry.screen(), "dropLabel"));
    }
    REQUIRE(unfinishedLabel(mill));
    CHECK(unfinishedLabel(mill)->typed.name == "Thick yoghurt");
    CHECK_FALSE(unfinishedLabel(harbour));
}

TEST_CASE(
    "a food that is chosen while a label is typed takes its place and keeps the list's focus") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.put("labelName", QStringLiteral("Thick yoghurt"));
    auto& list = child<QListView>(pantry.screen(), "foods");
    list.setFocus();
    list.setCurrentIndex(list.model()->index(1, 0));
    pressKey(list, Qt::Key_Down);
    CHECK(list.hasFocus());
    CHECK_FALSE(child<QLineEdit>(pantry.screen(), "labelName").isVisible());
    CHECK(child<QLabel>(pantry.screen(), "foodName").isVisible());
}

}  // namespace nettare
