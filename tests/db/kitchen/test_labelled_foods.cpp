#include <catch2/catch.hpp>

#include "core/edit/food_row_edits.h"
#include "core/food/own_food_json.h"
#include "core/food/table_food_json.h"
#include "core/label/label_values.h"
#include "db/own_matches.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

namespace nettare {

namespace {

/// A tub of yogurt whose package prints so many calories and grams of fat per 170 g.
OwnFood packOf(const std::string& calories, const std::string& fat) {
    LabelFacts label;
    label.servingSize = Decimal{170, 0};
    label.householdAmount = readAmount("3/4").value();
    label.householdUnit = "cup";
    label.amounts = {{Component::ENERC_KCAL, calories},
                     {Component::FAT, fat},
                     {LabelOnly::POLYL, "0"},
                     {Component::FIBTG, "less than 1"}};
    label.date = "2026-05-16";
    OwnFood own;
    own.food.row = {"own", "", ""};
    own.food.name = "Thick yogurt, plain";
    own.food.addedSugars = {AddedSugarKind::None, 0, "milk and cultures only"};
    own.food.profile = labelProfile(label);
    own.food.label = std::move(label);
    own.origin = {"package label", "2026-05-16", "", {}, "", {}};
    return own;
}

TableRow keptPack(Kitchen& kitchen, OwnFood own, const TableRow& of = {"own", "", ""}) {
    own.food.row = of;
    const auto row = kitchen.saveOwnFood(own, kNoon);
    if (!row) FAIL(said(row.error()));
    return *row;
}

Json dishWith(const TableRow& row) {
    Json document = dish("Cold soup");
    Json table = Json::object();
    table.set("table", Json{row.table}).set("release", Json{row.release});
    table.set("number", Json{row.number});
    (*document.find("foods")->items())[0].set("table", std::move(table));
    return document;
}

}  // namespace

TEST_CASE("a labelled food is kept with its label, each pack as a version of its own",
          "[kitchen][own][label]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow first = keptPack(kitchen, packOf("130", "6"));
    const TableRow second = keptPack(kitchen, packOf("140", "7"), first);
    CHECK(second == TableRow{"own", "2", first.number});
    CHECK(*(*kitchen.food(first))->label->printed(Component::FAT) == "6");
    CHECK(*(*kitchen.food(second))->label->printed(Component::FAT) == "7");
    const auto versions = kitchen.ownFoodVersions(first.number);
    REQUIRE(versions->size() == 2);
    CHECK(*versions->front().food.label->printed(Component::ENERC_KCAL) == "130");
    CHECK(versions->back().food.label->householdUnit == "cup");
    CHECK(kitchen.ownFoods()->front().current.food.row == second);
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("a labelled food is found by its name with what its label comes to per 100 g",
          "[kitchen][own][label]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow row = keptPack(kitchen, packOf("130", "6"));
    const OwnMatches found = ownMatches(*kitchen.ownFoods(), "yogurt thick");
    REQUIRE(found.well.size() == 1);
    CHECK(found.well.front().row == row);
    CHECK(*found.well.front().energyKcalPer100g == Approx(130 / 1.7));
    // Polyols are no component; less than 1 g of fibre is half a gram in a list.
    CHECK(found.well.front().knownComponents == 3);
}

TEST_CASE("a revision keeps the pack that it was cooked with", "[kitchen][own][label]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const TableRow first = keptPack(kitchen, packOf("130", "6"));
    const std::string soup = *kitchen.addRecipe(dishWith(first), kNoon);
    RevisionToKeep revision = toKeep(dishWith(first), "");
    revision.foods = {**kitchen.food(first)};
    REQUIRE(kitchen.keep(soup, revision));
    const TableRow second = keptPack(kitchen, packOf("140", "7"), first);
    CHECK(kitchen.usedRows()->at(first.text()) == 1);
    CHECK(kitchen.recipesUsing(second)->front().newestRevision == 1);
    const auto edit = moveOwnFoods(dishWith(first), {first.number}, second, "thick yogurt");
    REQUIRE(kitchen.journal(soup, added(0, {*edit})));
    CHECK(kitchen.recipesUsing(second)->front().draftRow == second);
    const auto pinned = kitchen.revision(soup, 1)->foods;
    REQUIRE(pinned.size() == 1);
    CHECK(*pinned.front().food.label->printed(Component::FAT) == "6");
    CHECK(foodVersion(pinned.front().food) == pinned.front().version);
    CHECK(kitchen.verify()->faults.empty());
}

TEST_CASE("a labelled food is copied in once for each label", "[kitchen][own][label]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    TableFood food = packOf("130", "6").food;
    food.row = {"own", "1", "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2"};
    REQUIRE(kitchen.copyIn({food, food}));
    CHECK(kitchen.verify()->foodVersions == 1);
    food.label->assents.push_back({LabelFindingKind::Energy, "ENERC_KCAL 130"});
    REQUIRE(kitchen.copyIn({food}));
    CHECK(kitchen.verify()->foodVersions == 2);
}

TEST_CASE("a label that a kitchen cannot have written is a damage", "[kitchen][own][label]") {
    OneKitchen one;
    std::string id;
    {
        Kitchen kitchen = one.open();
        id = keptPack(kitchen, packOf("130", "6")).number;
    }
    const std::string broken = GENERATE(as<std::string>{}, "replace(content, '\"us\"', '\"xx\"')",
                                        "replace(content, ',\"serving_grams\":\"170\"', '')",
                                        "replace(content, 'FIBTG', 'ENERC_KCAL')");
    runSql(one.path(),
           "DROP TRIGGER own_food_version_is_not_edited; UPDATE own_food_version SET content = " +
               broken);
    const Kitchen kitchen = one.open();
    CHECK(kitchen.food({"own", "1", id}).error().code == ErrorCode::KitchenDamaged);
    CHECK(kitchen.ownFoods().error().code == ErrorCode::KitchenDamaged);
    CHECK(kitchen.verify()->faults.front().code == ErrorCode::OwnFoodChanged);
}

TEST_CASE("a label that could not be read again is not saved", "[kitchen][own][label]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    OwnFood own = packOf("130", "6");
    const std::string bad =
        GENERATE(as<std::string>{}, "", "6\n<b>g</b>", "\u202e6", std::string(10'000, '6'));
    own.food.label->amounts[1].printed = bad;
    CHECK_FALSE(kitchen.saveOwnFood(own, kNoon));
    CHECK(kitchen.ownFoods()->empty());
}

}  // namespace nettare
