#include "core/ledger/reading_subject.h"

#include <catch2/catch.hpp>

#include "core/recipe/read_recipe.h"
#include "json_edit.h"

using namespace nettare;

namespace {

RecipeDocument skewersRead() {
    const auto read =
        readRecipe(jsonOf(fileText(NETTARE_RESOURCES "/demo/prawn-fennel-skewers.json")));
    REQUIRE(read);
    return *read;
}

}  // namespace

TEST_CASE("the ledger calls a reading of a series by the series and its piece", "[ledger]") {
    const ReadingSubject prawns = subjectOf(skewersRead(), "prawn-6");
    CHECK(prawns.what == "prawns, peeled");
    CHECK(prawns.why == "series, for “Charred prawn & fennel skewers”");
    CHECK(prawns.row == "usda-sr 28 15270");
    CHECK(prawns.series == SeriesMark{SeriesKind::PerPiece, "prawn", {}, ""});
}

TEST_CASE("the ledger calls the weight of a line by its food", "[ledger]") {
    const ReadingSubject fennel = subjectOf(skewersRead(), "fennel");
    CHECK(fennel.what == "fennel");
    CHECK(fennel.why == "weight of the line, for “Charred prawn & fennel skewers”");
    CHECK_FALSE(fennel.series);
}

TEST_CASE("the ledger tells the dish, what is not eaten and what is left over apart", "[ledger]") {
    const RecipeDocument recipe = skewersRead();
    CHECK(subjectOf(recipe, "dish").why == "cooked weight");
    CHECK(subjectOf(recipe, "sticks").why == "not eaten, in the cooked weight");
    const ReadingSubject left = subjectOf(recipe, "marinade-left");
    CHECK(left.what == "Charred prawn & fennel skewers");
    CHECK(left.why == "left over, for “Charred prawn & fennel skewers”");
    CHECK(subjectOf(recipe, "nothing-of-it").what.empty());
}

TEST_CASE("a series that follows the ledger keeps its name and conditions there", "[ledger]") {
    RecipeDocument recipe = skewersRead();
    recipe.series.front().bench = BenchEntry{"prawn meat", "", {"size 16/20"}};
    const ReadingSubject prawns = subjectOf(recipe, "prawn-6");
    CHECK(prawns.what == "prawn meat");
    CHECK(prawns.series == SeriesMark{SeriesKind::PerPiece, "prawn", {"size 16/20"}, ""});
}

TEST_CASE("a reading that came out of another one is of a ratio", "[ledger]") {
    RecipeDocument recipe = skewersRead();
    SeriesEntry trimmed;
    trimmed.id = "fennel-trimmed";
    trimmed.name = "fennel, trimmed";
    trimmed.kind = SeriesKind::Ratio;
    trimmed.pairs = {{"oil", "fennel"}};
    recipe.series.push_back(trimmed);
    recipe.lines[1].trim = "fennel-trimmed";
    const ReadingSubject after = subjectOf(recipe, "fennel");
    CHECK(after.what == "fennel, trimmed");
    CHECK(after.series == SeriesMark{SeriesKind::Ratio, "edible / bought", {}, "oil"});
    CHECK_FALSE(subjectOf(recipe, "oil").series);
}
