#include "app/gui/pantry/label_typing.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/theme/user_settings.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

namespace nettare {

namespace {

/// The skewers' fennel is that labelled food from now on, and the draft is kept as a revision.
void publishWith(PantryWindow& pantry, const TableRow& row) {
    DraftSession& draft = pantry.demo().draft();
    Json table = Json::object();
    table.set("table", Json{row.table}).set("release", Json{row.release});
    table.set("number", Json{row.number});
    Edit edit{EditKind::Food, "fennel", {}};
    for (const Json& food : *draft.document().find("foods")->items())
        if (*food.find("id")->text() == "fennel")
            edit.changes.push_back(SetMember{"/foods/fennel/table", *food.find("table"), table});
    const auto food = pantry.kitchen().food(row);
    REQUIRE(food);
    REQUIRE(draft.apply(edit, *food));
    REQUIRE_FALSE(draft.failure());
    pantry.kitchen().keep(QStringLiteral("with the package's fennel"));
    pantry.rest();
    REQUIRE_FALSE(pantry.kitchen().revisions().empty());
}

}  // namespace

TEST_CASE("a new pack lists the published figures that it would move, and leads to their recipe") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.put("labelName", QStringLiteral("Grilled fennel, jar"));
    typing.save();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    publishWith(pantry, pantry.kitchen().ownFoods().all().front().current.food.row);

    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    typing.put("label_ENERC_KCAL", QStringLiteral("240"));
    typing.put("label_FAT", QStringLiteral("16"));
    typing.enter();
    typing.save();
    pantry.rest();
    pantry.rest();
    auto& words = child<QLabel>(pantry.screen(), "movedWords");
    REQUIRE(waitUntil([&] { return words.text() != QStringLiteral("looking…"); }));
    auto& table = child<QTableView>(pantry.screen(), "movedFigures");
    REQUIRE(table.isVisible());
    CHECK(pantry.cell("movedFigures", 0, 0)
              .startsWith(QStringLiteral("Charred prawn & fennel skewers")));
    CHECK(pantry.cell("movedFigures", 1, 0) == QStringLiteral("Energy per skewer"));
    CHECK(pantry.cell("movedFigures", 1, 1).endsWith(QStringLiteral(" kcal")));
    CHECK(pantry.cell("movedFigures", 1, 1) != pantry.cell("movedFigures", 1, 2));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-moved"));
    const QSignalSpy asked{&pantry.screen(), &PantryScreen::recipeAsked};
    click(*table.viewport(), {20, 50});
    REQUIRE(asked.size() == 1);
    CHECK(asked.front().front().toString() == pantry.demo().draft().recipe());
}

TEST_CASE("a new pack that prints the same moves nothing, and says so") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.save();
    pantry.rest();
    publishWith(pantry, pantry.kitchen().ownFoods().all().front().current.food.row);
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    typing.put("labelNote", QStringLiteral("the same again"));
    typing.save();
    pantry.rest();
    pantry.rest();
    auto& words = child<QLabel>(pantry.screen(), "movedWords");
    REQUIRE(waitUntil([&] { return words.text() != QStringLiteral("looking…"); }));
    CHECK(words.text() ==
          QStringLiteral("None: no kept revision has a figure that leaves its rounding."));
    CHECK_FALSE(child<QTableView>(pantry.screen(), "movedFigures").isVisible());
}

}  // namespace nettare
