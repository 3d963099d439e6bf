#include "app/gui/pantry/pantry_window.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/sheet/food_offers.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>

namespace nettare {

namespace {

void put(QWidget& root, const char* name, const QString& text) {
    auto& field = child<QLineEdit>(root, name);
    field.setFocus();
    field.selectAll();
    typeText(field, text);
}

/// Copies the food that is shown, with another name, energy and source.
void copyAs(PantryWindow& pantry, const QString& name, const QString& energy) {
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    put(pantry.screen(), "ownName", name);
    put(pantry.screen(), "ownSource", QStringLiteral("grower's sheet"));
    put(pantry.screen(), "own_ENERC_KCAL", energy);
    click(child<QPushButton>(pantry.screen(), "saveOwnFood"));
    pantry.rest();
}

/// The draft's fennel becomes that own food; it stays weighed.
void useInDraft(PantryWindow& pantry, const TableRow& row) {
    DraftSession& draft = pantry.demo().draft();
    Json table = Json::object();
    table.set("table", Json{row.table}).set("release", Json{row.release});
    table.set("number", Json{row.number});
    const Json& foods = *draft.document().find("foods");
    Edit edit{EditKind::Food, "fennel", {}};
    for (const Json& food : *foods.items())
        if (*food.find("id")->text() == "fennel")
            edit.changes.push_back(SetMember{"/foods/fennel/table", *food.find("table"), table});
    const auto food = pantry.kitchen().food(row);
    REQUIRE(food);
    REQUIRE(draft.apply(edit, *food));
    REQUIRE_FALSE(draft.failure());
    pantry.rest();
}

bool draftUses(PantryWindow& pantry, const TableRow& row) {
    const std::string text = writeJson(pantry.demo().draft().document());
    return text.find("\"number\":\"" + row.number + "\",\"release\":\"" + row.release + "\"") !=
           std::string::npos;
}

}  // namespace

TEST_CASE("a table food is copied and adjusted into an own food that knows what was changed") {
    PantryWindow pantry;
    pantry.search(QStringLiteral("fennel bulb raw"));
    copyAs(pantry, QStringLiteral("Florence fennel"), QStringLiteral("27"));
    CHECK(pantry.shown() == QStringLiteral("Florence fennel"));
    const QString origin = child<QLabel>(pantry.screen(), "foodOrigin").text();
    CHECK(origin.startsWith(QStringLiteral("Own food, version 1 of 1: grower's sheet, ")));
    CHECK(origin.contains(QStringLiteral("other than there: Energy")));
    CHECK(pantry.cell("foodValues", pantry.rowOf("foodValues", QStringLiteral("Energy")), 3) ==
          QStringLiteral("typed, from grower's sheet"));
    // What was left is as it is there.
    const int protein = pantry.rowOf("foodValues", QStringLiteral("Protein"));
    CHECK(pantry.cell("foodValues", protein, 1) == QStringLiteral("1.24 g"));
    CHECK(pantry.cell("foodValues", protein, 3).startsWith(QStringLiteral("as in SR28")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-own"));
}

TEST_CASE("an own food comes first in searches and is offered on the sheet") {
    PantryWindow pantry;
    pantry.addOwn(QStringLiteral("Fennel, from the garden"), 29);
    pantry.search(QStringLiteral("fennel"));
    CHECK(pantry.listed().front().startsWith(QStringLiteral("Fennel, from the garden | own food")));
    const auto offers = foodOffers(pantry.kitchen(), QStringLiteral("fennel garden"));
    REQUIRE(offers.size() == 1);
    CHECK(offers.front().choice.row.table == "own");
    pantry.search({});
    CHECK(pantry.listed().contains(QStringLiteral("Own foods | ")));
}

TEST_CASE("a form of an own food says in its place what is wrong and keeps what was typed") {
    PantryWindow pantry;
    click(child<QPushButton>(pantry.screen(), "newOwnFood"));
    auto& refusal = child<QLabel>(pantry.screen(), "ownRefusal");
    auto& save = child<QPushButton>(pantry.screen(), "saveOwnFood");
    click(save);
    CHECK(refusal.text() == QStringLiteral("Name: the text is empty; write what is meant."));
    CHECK(child<QLineEdit>(pantry.screen(), "ownName").hasFocus());
    put(pantry.screen(), "ownName", QStringLiteral("Stock"));
    put(pantry.screen(), "own_PROCNT", QStringLiteral("1,2"));
    click(save);
    CHECK(refusal.text() ==
          QStringLiteral("Protein: “1,2” is no decimal number; write it with a point, such as "
                         "“12.5”, with at most six digits before and six after it."));
    put(pantry.screen(), "own_PROCNT", QStringLiteral("120"));
    click(save);
    CHECK(refusal.text() == QStringLiteral("Protein: “120” lies outside 0 to 100; correct it."));
    put(pantry.screen(), "own_PROCNT", QStringLiteral("1.2"));
    put(pantry.screen(), "ownAddedReason", QStringLiteral("plain single food"));
    put(pantry.screen(), "measure0_amount", QStringLiteral("1"));
    put(pantry.screen(), "measure0_unit", QStringLiteral("ladle"));
    put(pantry.screen(), "ownSource", QStringLiteral("my notebook"));
    click(save);
    CHECK(refusal.text() ==
          QStringLiteral("Measure 1, grams: the text is empty; write what is meant."));
    put(pantry.screen(), "measure0_grams", QStringLiteral("120"));
    put(pantry.screen(), "ownDate", QStringLiteral("May"));
    click(save);
    CHECK(refusal.text() ==
          QStringLiteral("Date of the source: “May” is no date; write it like 2026-05-16."));
    put(pantry.screen(), "ownDate", QStringLiteral("2026-05-16"));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-form"));
    click(save);
    pantry.rest();
    CHECK(pantry.shown() == QStringLiteral("Stock"));
    CHECK(pantry.cell("foodMeasures", 0, 0) == QStringLiteral("1 ladle"));
    CHECK(pantry.cell("foodValues", pantry.rowOf("foodValues", QStringLiteral("Energy")), 1) ==
          QStringLiteral("no data"));
}

TEST_CASE("what was typed in the form of an own food is not lost by leaving it") {
    PantryWindow pantry;
    click(child<QPushButton>(pantry.screen(), "newOwnFood"));
    put(pantry.screen(), "ownName", QStringLiteral("Stock"));
    click(child<QPushButton>(pantry.screen(), "leaveOwnFood"));
    CHECK(child<QLabel>(pantry.screen(), "ownRefusal").text() ==
          QStringLiteral("This is not saved yet: save it, or drop what was typed."));
    CHECK(child<QLineEdit>(pantry.screen(), "ownName").text() == QStringLiteral("Stock"));
    click(child<QPushButton>(pantry.screen(), "newOwnFood"));
    pantry.search(QStringLiteral("fennel"));
    CHECK(child<QLineEdit>(pantry.screen(), "ownName").text() == QStringLiteral("Stock"));
    CHECK(child<QLineEdit>(pantry.screen(), "ownName").isVisible());
    click(child<QPushButton>(pantry.screen(), "dropOwnFood"));
    CHECK_FALSE(child<QLineEdit>(pantry.screen(), "ownName").isVisible());
}

TEST_CASE("a change of an own food is a new version, and undo lets the one before count again") {
    PantryWindow pantry;
    const TableRow row = pantry.addOwn(QStringLiteral("Rye flour"), 330);
    pantry.search(QStringLiteral("rye flour"));
    REQUIRE(pantry.shown() == QStringLiteral("Rye flour"));
    copyAs(pantry, QStringLiteral("Rye flour, fine"), QStringLiteral("341"));
    CHECK(pantry.shown() == QStringLiteral("Rye flour, fine"));
    const auto& stack = pantry.kitchen().ownFoods().undoStack();
    CHECK(stack.undoText() == QStringLiteral("change of Rye flour, fine"));
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier);
    pantry.rest();
    CHECK(pantry.shown() == QStringLiteral("Rye flour"));
    CHECK(pantry.kitchen().ownFoods().record(row.number)->versions == 2);
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    pantry.rest();
    CHECK(pantry.shown() == QStringLiteral("Rye flour, fine"));
    // Before it was made there was none: undo takes it out of use, it is never removed.
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier);
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier);
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().record(row.number)->retired);
    CHECK(pantry.kitchen().searchFoods(QStringLiteral("rye flour fine"), 5).hits.empty());
}

TEST_CASE("a draft that uses an earlier version is offered the new one, and undo takes it back") {
    PantryWindow pantry;
    const TableRow row = pantry.addOwn(QStringLiteral("Rye flour"), 330);
    useInDraft(pantry, row);
    CHECK(draftUses(pantry, row));
    const double before = pantry.demo().kcal();
    pantry.search(QStringLiteral("rye flour"));
    copyAs(pantry, QStringLiteral("Rye flour"), QStringLiteral("390"));
    TableRow second = row;
    second.release = "2";
    CHECK(draftUses(pantry, row));
    CHECK(child<QLabel>(child<QWidget>(pantry.screen(), "moveOffer"), "messageText")
              .text()
              .startsWith(QStringLiteral("One draft uses another version: Charred prawn")));
    auto& move = child<QPushButton>(child<QWidget>(pantry.screen(), "moveOffer"), "messageAction");
    CHECK(move.text() == QStringLiteral("Move it to version 2"));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-move"));
    click(move);
    pantry.rest();
    CHECK(draftUses(pantry, second));
    CHECK(pantry.demo().kcal() > before);
    CHECK_FALSE(child<QWidget>(pantry.screen(), "moveOffer").isVisible());
    pantry.demo().draft().undoStack().undo();
    CHECK(draftUses(pantry, row));
    CHECK(pantry.demo().kcal() == before);
}

TEST_CASE("two own foods that are one thing are merged, drafts move, and undo parts them") {
    PantryWindow pantry;
    const TableRow stays = pantry.addOwn(QStringLiteral("Rye flour"), 330);
    const TableRow goes = pantry.addOwn(QStringLiteral("Flour of rye"), 333);
    useInDraft(pantry, goes);
    pantry.search(QStringLiteral("rye flour"));
    REQUIRE(pantry.shown() == QStringLiteral("Rye flour"));
    click(child<QPushButton>(pantry.screen(), "askMerge"));
    auto& other = child<QComboBox>(pantry.screen(), "mergeOther");
    other.setCurrentText(QStringLiteral("Flour of rye"));
    child<QComboBox>(pantry.screen(), "mergeStays").setCurrentText(QStringLiteral("Rye flour"));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("pantry-merge"));
    click(child<QPushButton>(pantry.screen(), "mergeFoods"));
    pantry.rest();
    // One is shown, also by the name of the other.
    const auto found = pantry.kitchen().searchFoods(QStringLiteral("flour of rye"), 5).hits;
    REQUIRE(found.size() == 1);
    CHECK(found.front().row == stays);
    CHECK(pantry.shown() == QStringLiteral("Rye flour"));
    click(child<QPushButton>(child<QWidget>(pantry.screen(), "moveOffer"), "messageAction"));
    pantry.rest();
    CHECK(draftUses(pantry, stays));
    pressKey(pantry.demo().window(), Qt::Key_Z, Qt::ControlModifier);
    pantry.rest();
    CHECK_FALSE(pantry.kitchen().ownFoods().record(goes.number)->stays);
    CHECK(pantry.kitchen().searchFoods(QStringLiteral("rye"), 9).hits[1].row.table == "own");
}

TEST_CASE("a draft that is not open moves on as well, by an edit that its undo takes back") {
    PantryWindow pantry;
    const TableRow row = pantry.addOwn(QStringLiteral("Rye flour"), 330);
    useInDraft(pantry, row);
    const QString recipe = pantry.demo().draft().recipe();
    for (const ShelvedRecipe& other : pantry.kitchen().shelf())
        if (QString::fromStdString(other.id) != recipe)
            pantry.demo().open(QString::fromStdString(other.id));
    REQUIRE(pantry.demo().draft().recipe() != recipe);
    pantry.search(QStringLiteral("rye flour"));
    copyAs(pantry, QStringLiteral("Rye flour"), QStringLiteral("390"));
    click(child<QPushButton>(child<QWidget>(pantry.screen(), "moveOffer"), "messageAction"));
    pantry.rest();
    pantry.demo().open(recipe);
    TableRow second = row;
    second.release = "2";
    CHECK(draftUses(pantry, second));
    pantry.demo().draft().undoStack().undo();
    CHECK(draftUses(pantry, row));
}

}  // namespace nettare
