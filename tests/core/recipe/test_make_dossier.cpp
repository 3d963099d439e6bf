#include <catch2/catch.hpp>

#include "core/recipe/dossier.h"

#include "json_edit.h"
#include "pantry.h"
#include "recipe_documents.h"

using namespace nettare;

using Indices = std::vector<std::size_t>;

namespace {

/// The full document, resolved.
Dossier fullDossier() {
    const auto dossier = fullPantry().dossierOf(fullRecipe());
    REQUIRE(dossier);
    return *dossier;
}

}  // namespace

TEST_CASE("what a line, a residue and the cooked weight name is found", "[recipe]") {
    const Dossier dossier = fullDossier();
    const Recipe& recipe = dossier.main();
    REQUIRE(recipe.lines.size() == 4);
    CHECK(recipe.lines[0].weighed == Indices{0});
    CHECK(recipe.lines[0].series->series == 0);
    CHECK(recipe.lines[0].series->use == SeriesUse::Among);
    CHECK(recipe.lines[0].trim == std::size_t{2});
    CHECK(recipe.lines[0].pointer == "/lines/0");
    CHECK(std::get<FoodIndex>(recipe.lines[0].what).index == 1);
    CHECK(std::get<FoodIndex>(recipe.lines[1].what).index == 0);
    CHECK(std::get<RecipeIndex>(recipe.lines[2].what).index == 1);
    CHECK(recipe.lines[2].name == "apple compote");

    REQUIRE(recipe.residues.size() == 6);
    CHECK(recipe.residues[0].lines == Indices{1});
    CHECK(recipe.residues[1].lines == Indices{0, 1});
    REQUIRE(recipe.residues[1].shares.size() == 1);
    CHECK(recipe.residues[1].shares[0].line == 1);
    CHECK(recipe.residues[1].shares[0].share == 2.0 / 3);
    CHECK(recipe.residues[1].called == "batter in the bowl");
    CHECK(recipe.residues[2].food == std::size_t{0});
    CHECK(recipe.residues[3].readings == Indices{3});
    CHECK(recipe.residues[3].pointer == "/residues/3");
    CHECK(recipe.cooked == Indices{2});
    CHECK(recipe.notEaten == Indices{3});
}

TEST_CASE("packs, yields and lines to taste are resolved", "[recipe]") {
    const Dossier dossier = fullDossier();
    const Recipe& recipe = dossier.main();
    CHECK(recipe.lines[0].each->amount.low() == Fraction{180});
    CHECK(recipe.lines[0].each->unit->symbol == "g");
    CHECK(recipe.lines[0].equals->unit->symbol == "kg");
    CHECK(recipe.lines[0].yield->series == std::size_t{2});
    CHECK(recipe.lines[0].yield->inverse);
    CHECK(recipe.lines[1].yield->factor == 0.8);
    CHECK(recipe.lines[1].yield->within == 0.05);
    CHECK(recipe.lines[2].optional);
    CHECK(recipe.lines[3].toTaste);
    CHECK(recipe.lines[3].unit == nullptr);
    CHECK(recipe.lines[3].piece.empty());
    CHECK(recipe.counting.optional == OptionalRule::Between);
}

TEST_CASE("a yield needs a ratio, and a pack an amount", "[recipe]") {
    const auto refused = [](const std::string& place, const Json& value) {
        const auto dossier = fullPantry().dossierOf(with(fullRecipe(), place, value));
        REQUIRE_FALSE(dossier);
        CHECK(dossier.error().pointer == place);
        return dossier.error().code;
    };
    CHECK(refused("/lines/0/yield/series", Json{"apples"}) == ErrorCode::SeriesKindDiffers);
    CHECK(refused("/lines/0/yield/series", Json{"none"}) == ErrorCode::UnknownReference);
    CHECK(refused("/lines/0/each/amount", Json{"a few"}) == ErrorCode::NotAnAmount);
    CHECK(refused("/lines/2/fill", Json{"scant"}) == ErrorCode::NotForKeptRecipe);
    CHECK(refused("/lines/2/state", Json{"raw"}) == ErrorCode::NotForKeptRecipe);
}

TEST_CASE("yield, amounts, units and assumptions are exact", "[recipe]") {
    const Dossier dossier = fullDossier();
    const Recipe& recipe = dossier.main();
    CHECK(recipe.file == "main.json");
    CHECK(recipe.title == "Quark pancakes with apple");
    CHECK(recipe.pieces.exact() == Fraction{12});
    CHECK(recipe.pieceWord == "pancake");
    CHECK(recipe.piecesWord == "pancakes");
    CHECK(recipe.portionPieces->exact() == Fraction::make(3, 2));
    CHECK_FALSE(recipe.portionGrams);
    CHECK(recipe.targets.size() == 2);
    CHECK(recipe.assumptions.pieceSpread.text() == "0.12");
    // The document counts the least of a range.
    CHECK(recipe.lines[0].amount.low() == Fraction{2});
    CHECK(recipe.lines[0].amount.high() == Fraction{2});
    CHECK(recipe.lines[0].amount.text() == "2-3");
    CHECK(recipe.lines[0].unit == nullptr);
    CHECK(recipe.lines[0].piece == "apple");
    CHECK(recipe.lines[1].amount.low() == Fraction::make(3, 2));
    // NIST Handbook 44, appendix C: 1 tbsp = 1/256 gal = 14.78676478125 ml.
    CHECK(recipe.lines[1].unit->factor.text() == "14.78676478125");
    CHECK(dossier.recipes[1].portionGrams->text() == "2");
}

TEST_CASE("a line's weight follows its amount from the amount it was weighed for", "[recipe]") {
    const auto factor = [](const char* amount, const char* weighedFor) {
        const Json middle = with(fullRecipe(), "/counting/ranges", Json{"middle"});
        const Json changed = with(with(middle, "/lines/0/amount", Json{amount}),
                                  "/lines/0/weighed_for", Json{weighedFor});
        return fullPantry().dossierOf(changed)->main().lines[0].weighedFactor;
    };
    CHECK(factor("2-3", "2") == 1.25);
    CHECK(factor("6", "4") == 1.5);
    CHECK(factor("1/2", "2") == 0.25);
    CHECK(fullDossier().main().lines[1].weighedFactor == 1);
}

TEST_CASE("a reference to nothing is refused where it stands", "[recipe]") {
    const ErrorCode code = ErrorCode::UnknownReference;
    const char* none = R"("none")";
    checkUnresolved({{"/vessels/0/scale", none, code, "/vessels/0/scale"},
                     {"/indications/3/scale", none, code, "/indications/3/scale"},
                     {"/readings/0/gross", none, code, "/readings/0/gross"},
                     {"/readings/0/vessel", none, code, "/readings/0/vessel"},
                     {"/readings/2/tare", none, code, "/readings/2/tare"},
                     {"/series/0/readings/0", none, code, "/series/0/readings/0"},
                     {"/series/2/pairs/0/before", none, code, "/series/2/pairs/0/before"},
                     {"/series/2/pairs/0/after", none, code, "/series/2/pairs/0/after"},
                     {"/lines/1/food", none, code, "/lines/1/food"},
                     {"/lines/0/weighed/0", none, code, "/lines/0/weighed/0"},
                     {"/lines/0/series/id", none, code, "/lines/0/series/id"},
                     {"/lines/0/trim", none, code, "/lines/0/trim"},
                     {"/residues/0/line", none, code, "/residues/0/line"},
                     {"/residues/1/mixture/1", none, code, "/residues/1/mixture/1"},
                     {"/residues/2/drip", none, code, "/residues/2/drip"},
                     {"/residues/3/readings/0", none, code, "/residues/3/readings/0"},
                     {"/cooked/readings/0", none, code, "/cooked/readings/0"},
                     {"/cooked/not_eaten/0", none, code, "/cooked/not_eaten/0"}});
    CHECK(errorAfter("/lines/1/food", none).value("found") == "none");
}

TEST_CASE("names of one kind are not names of another", "[recipe]") {
    const ErrorCode code = ErrorCode::UnknownReference;
    checkUnresolved({{"/readings/0/gross", R"("apple-bought")", code, "/readings/0/gross"},
                     {"/lines/0/weighed/0", R"("apple-1")", code, "/lines/0/weighed/0"},
                     // What drips is a food of this document, not a recipe.
                     {"/residues/2/drip", R"("compote")", code, "/residues/2/drip"}});
}

TEST_CASE("an id that stands twice in a list is refused", "[recipe]") {
    const ErrorCode code = ErrorCode::DuplicateId;
    checkUnresolved({{"/scales/1/id", R"("pocket")", code, "/scales/1/id"},
                     {"/vessels/-", R"({"id":"steel-bowl","name":"b","scale":"pocket","tare":"1"})",
                      code, "/vessels/1/id"},
                     {"/indications/1/id", R"("apple-1")", code, "/indications/1/id"},
                     {"/readings/1/id", R"("apple-bought")", code, "/readings/1/id"},
                     {"/series/1/id", R"("apples")", code, "/series/1/id"},
                     {"/foods/1/id", R"("quark")", code, "/foods/1/id"},
                     {"/lines/1/id", R"("apple")", code, "/lines/1/id"},
                     {"/foods/0/label/declares/1/component", R"("ENERC_KCAL")", code,
                      "/foods/0/label/declares/1"}});
    CHECK(errorAfter("/lines/1/id", R"("apple")").value("found") == "apple");
}

TEST_CASE("a weight counted twice in one list is refused", "[recipe]") {
    const ErrorCode code = ErrorCode::DuplicateId;
    checkUnresolved({{"/lines/0/weighed/-", R"("apple-bought")", code, "/lines/0/weighed/1"},
                     {"/series/0/readings/-", R"("apple-bought")", code, "/series/0/readings/1"},
                     {"/residues/1/mixture/-", R"("apple")", code, "/residues/1/mixture/2"},
                     {"/cooked/readings/-", R"("batch")", code, "/cooked/readings/1"}});
}

TEST_CASE("an amount that cannot be read carries its place", "[recipe]") {
    checkUnresolved(
        {{"/lines/2/amount", R"("1,500")", ErrorCode::AmountAmbiguous, "/lines/2/amount"},
         {"/makes/pieces", R"("1.500")", ErrorCode::AmountAmbiguous, "/makes/pieces"},
         {"/lines/2/amount", R"("some")", ErrorCode::NotAnAmount, "/lines/2/amount"},
         {"/lines/0/amount", R"("3-2")", ErrorCode::RangeReversed, "/lines/0/amount"},
         {"/lines/0/weighed_for", R"("0")", ErrorCode::AmountNotPositive, "/lines/0/weighed_for"},
         {"/foods/0/label/serving/amount", R"("two")", ErrorCode::NotAnAmount,
          "/foods/0/label/serving/amount"}});
    const Error ambiguous = errorAfter("/lines/2/amount", R"("1,500")");
    CHECK(ambiguous.value("decimal") == "1.500");
    CHECK(ambiguous.value("grouped") == "1500");
}

TEST_CASE("a portion is one number, not a range", "[recipe]") {
    checkUnresolved(
        {{"/portion/pieces", R"("1-2")", ErrorCode::RangeNotAllowed, "/portion/pieces"}});
    CHECK(errorAfter("/portion/pieces", R"("1-2")").value("found") == "1-2");
}

TEST_CASE("a range of pieces counts by the document's rule", "[recipe]") {
    const auto makes = [](const char* pieces, const char* rule) {
        const Json changed =
            with(with(fullRecipe(), "/makes/pieces", Json{pieces}), "/counting/makes", Json{rule});
        return fullPantry().dossierOf(changed)->main();
    };
    CHECK(makes("4-6", "middle").pieces.exact() == Fraction{5});
    CHECK(makes("4-6", "middle").piecesRange->high() == Fraction{6});
    CHECK(makes("1-2", "middle").pieces.exact() == Fraction::make(3, 2));
    CHECK(makes("4-6", "least").pieces.exact() == Fraction{4});
    CHECK_FALSE(makes("4-6", "least").piecesRange);
    CHECK(makes("4-6", "most").pieces.exact() == Fraction{6});
    CHECK_FALSE(makes("5", "middle").piecesRange);
}

TEST_CASE("every amount of a line counts by the rule for ranges", "[recipe]") {
    Json document = with(fullRecipe(), "/lines/0/weighed_for", Json{"2-4"});
    document = with(document, "/lines/0/assumed/for", Json{"4-5"});
    const auto line = [&](const char* rule) {
        const Json ruled = with(document, "/counting/ranges", Json{rule});
        return fullPantry().dossierOf(ruled)->main().lines[0];
    };
    CHECK(line("middle").weighedFactor == 2.5 / 3);
    CHECK(line("least").weighedFactor == 1);
    CHECK(line("most").weighedFactor == 0.75);
    // 300 g were assumed for four to five apples.
    CHECK(line("least").assumed->grams.value() == Approx(150));
    CHECK(line("most").assumed->grams.value() == Approx(180));
}

TEST_CASE("a share is of a line in the mixture, and a step one that there is", "[recipe]") {
    const ErrorCode share = ErrorCode::ShareNotOfMixture;
    const char* place = "/residues/1/shares/0/share";
    checkUnresolved(
        {{place, R"("3/2")", share, place},
         {place, R"("1/3-1/2")", share, place},
         {place, R"("much")", ErrorCode::NotAnAmount, place},
         {"/residues/1/shares/0/line", R"("compote")", share, place},
         {"/residues/1/shares/0/line", R"("none")", ErrorCode::UnknownReference,
          "/residues/1/shares/0/line"},
         {"/residues/1/mixed_at", R"("3")", ErrorCode::UnknownReference, "/residues/1/mixed_at"}});
    CHECK(errorAfter(place, R"("3/2")").value("line") == "quark");
    CHECK(errorAfter("/residues/1/shares",
                     R"([{"line":"quark","share":"1"},{"line":"quark","share":"1/2"}])")
              .code == ErrorCode::DuplicateId);
}

TEST_CASE("a series gives grams for its own piece word or unit only", "[recipe]") {
    const ErrorCode code = ErrorCode::SeriesKindDiffers;
    checkUnresolved({{"/lines/0/piece", R"("pear")", code, "/lines/0/series/id"},
                     {"/lines/0/series/id", R"("spoons")", code, "/lines/0/series/id"},
                     {"/lines/0/series/id", R"("peeling")", code, "/lines/0/series/id"},
                     {"/lines/1/unit", R"("cup")", code, "/lines/1/series/id"},
                     {"/lines/1/series/id", R"("apples")", code, "/lines/1/series/id"},
                     {"/lines/0/trim", R"("apples")", code, "/lines/0/trim"}});
    const Error other = errorAfter("/lines/1/unit", R"("cup")");
    CHECK(other.value("found") == "spoons");
    CHECK(other.value("of") == "tbsp");
    CHECK(other.value("wanted") == "cup");
    CHECK(errorAfter("/lines/0/series/id", R"("peeling")").value("of") == "a ratio");
    CHECK(errorAfter("/lines/0/trim", R"("apples")").value("wanted") == "a ratio");
}
