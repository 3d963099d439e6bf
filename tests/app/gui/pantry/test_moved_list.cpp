#include "app/gui/pantry/label_typing.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/pantry/moved_list.h"
#include "app/theme/user_settings.h"
#include "core/edit/heading_edits.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include <algorithm>

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
    CHECK(table.model()->headerData(1, Qt::Horizontal).toString() == QStringLiteral("Before"));
    CHECK(words.text().contains(QStringLiteral("newest kept revision of each recipe")));
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
    auto& again = child<QPushButton>(pantry.screen(), "lookMoved");
    CHECK(again.isVisible());
    CHECK(again.text() == QStringLiteral("Look again"));
}

TEST_CASE("figures that would move are looked for again once another revision was kept") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.save();
    pantry.rest();
    publishWith(pantry, pantry.kitchen().ownFoods().all().front().current.food.row);
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    typing.put("label_ENERC_KCAL", QStringLiteral("240"));
    typing.put("label_FAT", QStringLiteral("16"));
    typing.enter();
    typing.save();
    pantry.rest();
    pantry.rest();
    const auto& table = child<QTableView>(pantry.screen(), "movedFigures");
    REQUIRE(waitUntil([&] { return table.isVisible(); }));
    const auto newest = [&] {
        int number = 0;
        for (const auto& each : pantry.kitchen().revisions())
            number = std::max(number, each.number);
        return QStringLiteral("revision %1").arg(number);
    };
    const QString before = newest();
    CHECK(pantry.cell("movedFigures", 0, 0).endsWith(before));
    const auto renamed = setTitle(pantry.demo().draft().document(), "Skewers");
    REQUIRE(renamed);
    REQUIRE(pantry.demo().draft().apply(*renamed));
    pantry.kitchen().keep(QStringLiteral("the same fennel"));
    pantry.rest();
    REQUIRE(newest() != before);
    pantry.kitchen().ownFoods().load();
    pantry.rest();
    CHECK(waitUntil([&] { return pantry.cell("movedFigures", 0, 0).endsWith(newest()); }));
}

TEST_CASE("where figures cannot be looked for, that is said and can be asked again") {
    DemoWindow demo;
    MovedList list{demo.kitchen()};
    TableFood gone;
    gone.row = {"own", "2", "0b0e4f0c-8a0e-4f5c-9a57-3f3d2f1f8a11"};
    list.setFood(gone, true);
    auto& look = child<QPushButton>(list, "lookMoved");
    look.click();
    auto& words = child<QLabel>(list, "movedWords");
    CHECK(words.text().contains(QStringLiteral("0b0e4f0c-8a0e-4f5c-9a57-3f3d2f1f8a11")));
    CHECK(words.property("tone").toString() == QStringLiteral("error"));
    CHECK_FALSE(look.isHidden());
    CHECK(look.text() == QStringLiteral("Look again"));
}

}  // namespace nettare
