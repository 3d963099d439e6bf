#include "app/kitchen/moved_figures.h"

#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "app/command_line/kitchen_recipes.h"
#include "app/files/share_folder.h"
#include "app/kitchen/keep_draft.h"
#include "core/label/label_values.h"

namespace nettare {

namespace {

constexpr auto kPackAt = "2026-05-16T12:00:00+02:00";

Kitchen kitchenInMemory() {
    auto kitchen = Kitchen::inMemory(kPackAt);
    REQUIRE(kitchen);
    return std::move(*kitchen);
}

/// Thick yogurt by its package: so many calories and grams of fat in 170 g.
OwnFood yogurtPack(const std::string& calories, const std::string& fat) {
    LabelFacts label;
    label.servingSize = Decimal{170, 0};
    label.amounts = {{Component::ENERC_KCAL, calories}, {Component::FAT, fat}};
    label.date = "2026-05-16";
    OwnFood own;
    own.food.row = {"own", "", ""};
    own.food.name = "Thick yogurt";
    own.food.addedSugars = {AddedSugarKind::None, 0, "milk and cultures only"};
    own.food.profile = labelProfile(label);
    own.food.label = std::move(label);
    own.origin = {"package label", "2026-05-16", "", {}, "", {}};
    return own;
}

TableRow savedPack(Kitchen& kitchen, OwnFood own, const TableRow& of = {"own", "", ""}) {
    own.food.row = of;
    const auto row = kitchen.saveOwnFood(own, kPackAt);
    REQUIRE(row);
    return *row;
}

/// A dish of 300 g of one food, which makes 10 pieces; a portion is two.
Json dishOf300g(const std::string& title, const std::string& food) {
    return *parseJson(fmt::format(
        R"({{"format": "nettare recipe", "version": 1, "title": "{}", "measures": "us",
            "makes": {{"pieces": "10", "piece": "spoon", "plural": "spoons"}},
            "portion": {{"pieces": "2"}},
            "foods": [{}],
            "lines": [{{"id": "l1", "amount": "300", "unit": "g", "food": "f1"}}]}})",
        title, food));
}

std::string rowEntry(const TableRow& row) {
    return fmt::format(
        R"({{"id": "f1", "name": "yogurt", "table": {{"table": "{}", "release": "{}", "number": "{}"}}}})",
        row.table, row.release, row.number);
}

/// Ten pieces of the kept recipe, which are all of it.
Json bowlOf(const std::string& reference) {
    Json json = dishOf300g(
        "Bowl", fmt::format(R"({{"id": "f1", "name": "sauce", "recipe": "{}"}})", reference));
    json.set("lines",
             *parseJson(R"([{"id": "l1", "amount": "10", "piece": "spoon", "food": "f1"}])"));
    return json;
}

/// Keeps the document, as a revision of the recipe where there is one; answers its id.
std::string keptAs(Kitchen& kitchen, const Json& document, const std::string& recipe = {}) {
    const auto tables = FoodTables::open(shareFolder() + "/starter.table");
    REQUIRE(tables);
    const auto closure = closureOfDraft(kitchen, document, *tables);
    REQUIRE(closure);
    const auto revision = revisionToKeep(document, *closure, "", kPackAt, {});
    REQUIRE(revision);
    std::string id = recipe.empty() ? *kitchen.addRecipe(document, kPackAt) : recipe;
    REQUIRE(kitchen.keep(id, *revision));
    return id;
}

std::vector<MovedRevision> movedIn(const Kitchen& kitchen, const std::string& id,
                                   const OwnFood& next) {
    auto moved = figuresMovedBy(kitchen, id, next.food);
    REQUIRE(moved);
    return std::move(*moved);
}

double energyOfBatch(const Kitchen& kitchen, const KeptReference& reference) {
    const auto recipe = openRevision(kitchen, reference);
    REQUIRE(recipe);
    return (*figuresPer(Basis::Batch, recipe->dossier, recipe->cooked))[Component::ENERC_KCAL]
        .value;
}

}  // namespace

TEST_CASE("a new pack moves the kept figures that rest on the old one, through kept recipes too",
          "[kitchen][label]") {
    Kitchen kitchen = kitchenInMemory();
    const TableRow first = savedPack(kitchen, yogurtPack("170", "9"));
    const std::string sauce = keptAs(kitchen, dishOf300g("Sauce", rowEntry(first)));
    const std::string bowl = keptAs(kitchen, bowlOf(sauce + "#1"));
    keptAs(kitchen, dishOf300g("Plain", rowEntry({"usda-sr", "28", "11957"})));
    const auto moved = movedIn(kitchen, first.number, yogurtPack("230", "9"));
    REQUIRE(moved.size() == 2);
    CHECK(moved[0].recipe == bowl);
    CHECK(moved[1].recipe == sauce);
    for (const MovedRevision& revision : moved) {
        CHECK(revision.revision == 1);
        CHECK_FALSE(revision.failure);
        // 300 g of 170 kcal in 170 g: 30 kcal a piece and 60 a portion; of 230 kcal 40.6 and 81.2.
        // The dishes were not weighed: 100 g of what went in have 100 and 135.3 kcal.
        std::string told;
        for (std::size_t i = 0; i < revision.figures.size(); ++i)
            if (revision.figures[i].component == Component::ENERC_KCAL)
                told += fmt::format("{}: {} to {}; ", revision.places[i],
                                    revision.figures[i].before, revision.figures[i].after);
        CHECK(told ==
              "per spoon: 30 kcal to 41 kcal; per portion: 60 kcal to 81 kcal; "
              "per 100 g: 100 kcal to 135 kcal; ");
        for (const MovedFigure& figure : revision.figures) {
            const bool isEnergy = figure.component == Component::ENERC_KCAL ||
                                  figure.component == Component::ENERC_KJ;
            CHECK(isEnergy);
        }
    }
}

TEST_CASE("an old revision keeps its pack's figures when a new pack is saved", "[kitchen][label]") {
    Kitchen kitchen = kitchenInMemory();
    const TableRow first = savedPack(kitchen, yogurtPack("170", "9"));
    const std::string sauce = keptAs(kitchen, dishOf300g("Sauce", rowEntry(first)));
    CHECK(energyOfBatch(kitchen, {sauce, 1}) == Approx(300));
    const TableRow second = savedPack(kitchen, yogurtPack("230", "9"), first);
    CHECK(energyOfBatch(kitchen, {sauce, 1}) == Approx(300));
    keptAs(kitchen, dishOf300g("Sauce", rowEntry(second)), sauce);
    CHECK(energyOfBatch(kitchen, {sauce, 2}) == Approx(300 * 230 / 170.0));
    CHECK(energyOfBatch(kitchen, {sauce, 1}) == Approx(300));
    // The newest revision has the new pack already.
    CHECK(movedIn(kitchen, first.number, yogurtPack("230", "9")).empty());
    CHECK(movedIn(kitchen, first.number, yogurtPack("170", "9")).size() == 1);
}

TEST_CASE("a new pack that prints as the old one moves nothing", "[kitchen][label]") {
    Kitchen kitchen = kitchenInMemory();
    const TableRow first = savedPack(kitchen, yogurtPack("170", "9"));
    keptAs(kitchen, dishOf300g("Sauce", rowEntry(first)));
    CHECK(movedIn(kitchen, first.number, yogurtPack("170", "9")).empty());
    OwnFood renamed = yogurtPack("170", "9");
    renamed.food.name = "Thick yogurt, new tub";
    renamed.food.label->date = "2026-11-02";
    CHECK(movedIn(kitchen, first.number, renamed).empty());
    CHECK(movedIn(kitchen, "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2", yogurtPack("230", "9")).empty());
}

TEST_CASE("a new pack that nothing can be computed with is told for each recipe",
          "[kitchen][label]") {
    Kitchen kitchen = kitchenInMemory();
    const TableRow first = savedPack(kitchen, yogurtPack("170", "9"));
    const std::string sauce = keptAs(kitchen, dishOf300g("Sauce", rowEntry(first)));
    const auto moved = movedIn(kitchen, first.number, yogurtPack("172", "9"));
    REQUIRE(moved.size() == 1);
    CHECK(moved.front().recipe == sauce);
    CHECK(moved.front().figures.empty());
    REQUIRE(moved.front().failure);
    CHECK(moved.front().failure->code == ErrorCode::LabelAmountImpossible);
}

}  // namespace nettare
