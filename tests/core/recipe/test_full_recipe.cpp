#include <catch2/catch.hpp>

#include "core/recipe/read_recipe.h"

#include "json_edit.h"
#include "recipe_documents.h"

using namespace nettare;

using Ids = std::vector<std::string>;

namespace {

/// The full document of the tests; its numbers are invented.
RecipeDocument fullDocument() {
    const auto read = readRecipe(fullRecipe());
    REQUIRE(read);
    return *read;
}

}  // namespace

TEST_CASE("title, yield, portion and method are read as written", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    CHECK(recipe.title == "Quark pancakes with apple");
    CHECK(recipe.note ==
          "Every number here is invented; the document holds every member of the form.");
    CHECK(recipe.measures == MeasureSystem::UsCustomary);
    CHECK(recipe.pieces == "12");
    CHECK(recipe.pieceWord == "pancake");
    CHECK(recipe.piecesWord == "pancakes");
    CHECK(recipe.portionPieces == "1 1/2");
    CHECK_FALSE(recipe.portionGrams);
    REQUIRE(recipe.steps.size() == 2);
    CHECK(recipe.steps[1].text == "Serve with the compote – warm.");
}

TEST_CASE("scales, vessels and what was shown are read digit by digit", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    REQUIRE(recipe.scales.size() == 2);
    CHECK(recipe.scales[0].id == "pocket");
    CHECK(recipe.scales[0].name == "pocket scale");
    CHECK(recipe.scales[0].unit == "g");
    CHECK(recipe.scales[0].readability.text() == "0.1");
    CHECK(recipe.scales[0].calibration->text() == "0.002");
    CHECK(recipe.scales[1].unit == "oz");
    CHECK_FALSE(recipe.scales[1].calibration);

    REQUIRE(recipe.vessels.size() == 1);
    CHECK(recipe.vessels[0].id == "steel-bowl");
    CHECK(recipe.vessels[0].name == "steel bowl");
    CHECK(recipe.vessels[0].scale == "pocket");
    CHECK(recipe.vessels[0].tare.text() == "212.2");

    REQUIRE(recipe.indications.size() == 6);
    CHECK(recipe.indications[0].id == "apple-1");
    CHECK(recipe.indications[0].scale == "pocket");
    CHECK(recipe.indications[0].shown.text() == "271.1");
    CHECK(recipe.indications[0].state == WeighedState::AsPurchased);
    CHECK(recipe.indications[0].at == "2026-03-07T18:12:09+01:00");
    CHECK(recipe.indications[1].shown.text() == "255.0");
    CHECK(recipe.indications[1].state == WeighedState::EdiblePortion);
    CHECK(recipe.indications[1].at.empty());
    CHECK(recipe.indications[2].shown.text() == "-0.1");
    CHECK(recipe.indications[2].state == WeighedState::Empty);
    CHECK(recipe.indications[4].state == WeighedState::Cooked);
    CHECK(recipe.indications[5].state == WeighedState::Residue);
}

TEST_CASE("readings and series keep their references", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    REQUIRE(recipe.readings.size() == 4);
    CHECK(recipe.readings[0].id == "apple-bought");
    CHECK(recipe.readings[0].gross == "apple-1");
    CHECK(recipe.readings[0].vessel == "steel-bowl");
    CHECK_FALSE(recipe.readings[0].tare);
    CHECK(recipe.readings[0].pieces == 2);
    CHECK(recipe.readings[2].tare == "parcel-empty");
    CHECK_FALSE(recipe.readings[2].vessel);

    REQUIRE(recipe.series.size() == 3);
    CHECK(recipe.series[0].id == "apples");
    CHECK(recipe.series[0].name == "apples");
    CHECK(recipe.series[0].kind == SeriesKind::PerPiece);
    CHECK(recipe.series[0].of == "apple");
    CHECK(recipe.series[0].readings == Ids{"apple-bought"});
    CHECK(recipe.series[0].bench == BenchEntry{"Apples", "", {"autumn"}});
    CHECK_FALSE(recipe.series[1].bench);
    CHECK(recipe.series[1].kind == SeriesKind::PerMeasure);
    CHECK(recipe.series[1].pooled);
    CHECK_FALSE(recipe.series[0].pooled);
    CHECK_FALSE(recipe.series[1].earlier);
    CHECK(recipe.series[0].earlier ==
          EarlierEntry{"apples, 2025", *Decimal::read("3.2"), *Decimal::read("5")});
    CHECK(recipe.series[2].pooled);
    CHECK(recipe.series[2].earlier ==
          EarlierEntry{"peels", *Decimal::read("0.031"), *Decimal::read("4")});
    CHECK(recipe.piecesWeighed == "apples");
    CHECK(recipe.series[2].kind == SeriesKind::Ratio);
    CHECK(recipe.series[2].of.empty());
    REQUIRE(recipe.series[2].pairs.size() == 1);
    CHECK(recipe.series[2].pairs[0].before == "apple-bought");
    CHECK(recipe.series[2].pairs[0].after == "apple-eaten");
    CHECK(recipe.series[2].bench ==
          BenchEntry{"apple", "edible / bought", {"autumn", "from the orchard"}});
}

TEST_CASE("a food's table row, label and stated values are read", "[recipe]") {
    const FoodEntry quark = fullDocument().foods.at(0);
    CHECK(quark.id == "quark");
    CHECK(quark.name == "quark");
    CHECK(quark.table->text() == "test-table 1 00017");
    REQUIRE(quark.label);
    CHECK(quark.label->facts.rules == LabelRules::Us);
    CHECK(quark.label->facts.servingSize->text() == "30");
    CHECK(quark.label->householdAmount == "2");
    CHECK(quark.label->facts.householdUnit == "tbsp");
    REQUIRE(quark.label->facts.amounts.size() == 2);
    CHECK(quark.label->facts.amounts[1].line == LabelLine{Component::FIBTG});
    CHECK(quark.label->facts.amounts[1].printed == "less than 1");
    REQUIRE(quark.stated.size() == 2);
    CHECK(quark.stated[0].component == Component::NA);
    CHECK(quark.stated[0].per100g.text() == "41");
    CHECK(quark.stated[0].within->text() == "3");
    CHECK(quark.stated[0].reason == "dairy's sheet");
    CHECK(quark.stated[1].per100g.text() == "92.0");
    CHECK_FALSE(quark.stated[1].within);
}

TEST_CASE("added sugars, kinds of food and kept recipes are read", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    REQUIRE(recipe.foods.size() == 3);
    CHECK(recipe.foods[0].addedSugars->kind == AddedSugarKind::Stated);
    CHECK(recipe.foods[0].addedSugars->per100g.text() == "1.5");
    CHECK(recipe.foods[0].addedSugars->reason == "dairy's sheet");
    CHECK_FALSE(recipe.foods[0].plant);
    CHECK_FALSE(recipe.foods[0].recipe);
    CHECK(recipe.foods[1].addedSugars->kind == AddedSugarKind::None);
    CHECK(recipe.foods[1].plant);
    CHECK_FALSE(recipe.foods[1].table);
    CHECK_FALSE(recipe.foods[1].label);
    CHECK(recipe.foods[2].name == "apple compote");
    CHECK(recipe.foods[2].recipe == "compote.json");
    CHECK_FALSE(recipe.foods[2].addedSugars);
}

TEST_CASE("a line keeps its amount as typed and all its ways to grams", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    REQUIRE(recipe.lines.size() == 4);
    const LineEntry& apple = recipe.lines[0];
    CHECK(apple.id == "apple");
    CHECK(apple.amount == "2-3");
    CHECK(apple.piece == "apple");
    CHECK_FALSE(apple.unit);
    CHECK(apple.food == "apple");
    CHECK(apple.preparation == "peeled");
    CHECK(apple.size == "large");
    CHECK(apple.asPurchased);
    CHECK(apple.weighed == Ids{"apple-bought"});
    CHECK(apple.weighedFor == "2");
    CHECK(apple.series->series == "apples");
    CHECK(apple.series->use == SeriesUse::Among);
    CHECK(apple.trim == "peeling");
    CHECK(apple.assumed->grams.text() == "300");
    CHECK(apple.assumed->within.text() == "40");
    CHECK(apple.assumed->reason == "by eye");
    CHECK(apple.way == Way::Series);

    const LineEntry& compote = recipe.lines[2];
    CHECK(recipe.lines[1].amount == "1½");
    CHECK(recipe.lines[1].series->use == SeriesUse::Others);
    CHECK(compote.unit == "g");
    CHECK_FALSE(compote.piece);
    CHECK(compote.preparation.empty());
    CHECK(compote.size.empty());
    CHECK_FALSE(compote.asPurchased);
    CHECK(compote.weighed.empty());
    CHECK_FALSE(compote.weighedFor);
    CHECK_FALSE(compote.series);
    CHECK_FALSE(compote.trim);
    CHECK_FALSE(compote.assumed);
    CHECK_FALSE(compote.way);
}

TEST_CASE("a line says how it is filled, packed, and in which state it is weighed", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    const LineEntry& apple = recipe.lines[0];
    CHECK(apple.each->amount == "180");
    CHECK(apple.each->unit == "g");
    CHECK(apple.equals->amount == "0.5");
    CHECK(apple.equals->unit == "kg");
    CHECK(apple.state == FoodState::WithBone);
    CHECK(apple.yield->to == FoodState::Raw);
    CHECK(apple.yield->series == "peeling");
    CHECK(apple.yield->inverse);
    CHECK_FALSE(apple.fill);
    CHECK_FALSE(apple.density);

    const LineEntry& quark = recipe.lines[1];
    CHECK(quark.fill == Fill::Heaping);
    CHECK(quark.density->gramsPerMl.text() == "1.05");
    CHECK(quark.density->within.text() == "0.02");
    CHECK(quark.density->reason == "weighed in a cylinder");
    CHECK(quark.yield->to == FoodState::Drained);
    CHECK(quark.yield->factor->text() == "0.8");
    CHECK(quark.yield->reason == "by eye");
    CHECK_FALSE(quark.yield->series);
    CHECK_FALSE(quark.state);
}

TEST_CASE("a line to taste has no amount, and the document says how it counts", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    const LineEntry& more = recipe.lines[3];
    CHECK(more.toTaste);
    CHECK(more.written == "apple slices to taste");
    CHECK(recipe.lines[2].written.empty());
    CHECK(more.amount.empty());
    CHECK_FALSE(more.unit);
    CHECK_FALSE(more.piece);
    CHECK(more.weighed == Ids{"apple-eaten"});
    CHECK(more.assumed->grams.text() == "5");
    CHECK(recipe.lines[2].optional);
    CHECK_FALSE(more.optional);
    CHECK(recipe.counting == Counting{ToTasteRule::PinchAPortion, OptionalRule::Between,
                                      RangeRule::Least, RangeRule::Most});
    CHECK(readRecipe(smallRecipe())->counting == Counting{});
}

TEST_CASE("residues, cooked weight and targets are read by what they are", "[recipe]") {
    const RecipeDocument recipe = fullDocument();
    REQUIRE(recipe.residues.size() == 6);
    CHECK(recipe.residues[0].kind == ResidueKind::Line);
    CHECK(recipe.residues[0].lines == Ids{"quark"});
    CHECK(recipe.residues[0].readings == Ids{"left"});
    CHECK(recipe.residues[1].kind == ResidueKind::Mixture);
    CHECK(recipe.residues[1].lines == Ids{"apple", "quark"});
    REQUIRE(recipe.residues[1].shares.size() == 1);
    CHECK(recipe.residues[1].shares[0].line == "quark");
    CHECK(recipe.residues[1].shares[0].share == "2/3");
    CHECK(recipe.residues[1].mixedAt == 1);
    CHECK(recipe.residues[1].called == "batter in the bowl");
    CHECK(recipe.residues[2].kind == ResidueKind::Drip);
    CHECK_FALSE(recipe.residues[2].mixedAt);
    CHECK(recipe.residues[2].called.empty());
    CHECK(recipe.residues[2].food == "quark");
    CHECK(recipe.residues[3].kind == ResidueKind::Unknown);
    CHECK(recipe.residues[4].kind == ResidueKind::Water);
    CHECK(recipe.residues[5].kind == ResidueKind::NotEaten);
    CHECK(recipe.cooked->readings == Ids{"batch"});
    CHECK(recipe.cooked->notEaten == Ids{"left"});
    REQUIRE(recipe.cooked->otherCooks.size() == 1);
    CHECK(recipe.cooked->otherCooks[0].readings == Ids{"batch"});
    CHECK(recipe.cooked->otherCooks[0].notEaten == Ids{"left"});
    REQUIRE(recipe.residues[0].otherCooks.size() == 1);
    CHECK(recipe.residues[0].otherCooks[0].readings == Ids{"left"});

    REQUIRE(recipe.targets.size() == 2);
    CHECK(recipe.targets[0].component == Component::ENERC_KCAL);
    CHECK(recipe.targets[0].per == Basis::Portion);
    CHECK(recipe.targets[0].atMost->text() == "350");
    CHECK_FALSE(recipe.targets[0].atLeast);
    CHECK(recipe.targets[1].per == Basis::Hundred);
    CHECK(recipe.targets[1].atLeast->text() == "6.5");
    CHECK_FALSE(recipe.targets[1].atMost);
}

TEST_CASE("assumptions are those of the document, else the defaults", "[recipe]") {
    const Assumptions given = fullDocument().assumptions;
    CHECK(given.pieceSpread.text() == "0.12");
    CHECK(given.volumeSpread.text() == "0.08");
    CHECK(given.spreadFreedom.text() == "10");
    CHECK(given.declarationSpread.text() == "0.05");
    CHECK(given.compositionSpread->text() == "0.1");

    // Medians of the measures of the starter table that have a spread: 14 % and 7 %.
    const Assumptions usual = readRecipe(smallRecipe())->assumptions;
    CHECK(usual.pieceSpread.text() == "0.14");
    CHECK(usual.volumeSpread.text() == "0.07");
    CHECK(usual.spreadFreedom.text() == "8");
    CHECK(usual.declarationSpread == Decimal{});
    CHECK_FALSE(usual.compositionSpread);
}

TEST_CASE("the least document has one line of one food and nothing weighed", "[recipe]") {
    const auto recipe = readRecipe(smallRecipe());
    REQUIRE(recipe);
    CHECK(recipe->measures == MeasureSystem::Metric);
    CHECK(recipe->portionGrams->text() == "2");
    CHECK_FALSE(recipe->portionPieces);
    CHECK(recipe->note.empty());
    CHECK(recipe->scales.empty());
    CHECK(recipe->series.empty());
    CHECK(recipe->residues.empty());
    CHECK_FALSE(recipe->cooked);
    CHECK(recipe->lines.size() == 1);
}
