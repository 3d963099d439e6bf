#include <catch2/catch.hpp>

#include "core/edit/way_edits.h"
#include "core/recipe/read_recipe.h"

#include "core/edit/place.h"
#include "demo.h"
#include "json_edit.h"

using namespace nettare;

TEST_CASE("grams that the cook assumes come with half-width and reason, and count at once",
          "[edit]") {
    const Json document = demo::skewers();
    const auto edit = setAssumed(document, "oil", {"40", "5,5", "by eye"});
    REQUIRE(edit);
    CHECK(edit->edit.kind == EditKind::Way);
    const auto recipe = readRecipe(*applied(document, edit->edit));
    REQUIRE(recipe);
    for (const LineEntry& line : recipe->lines)
        if (line.id == "oil") {
            REQUIRE(line.assumed);
            CHECK(line.assumed->grams.text() == "40");
            CHECK(line.assumed->within.text() == "5.5");
            CHECK(line.assumed->reason == "by eye");
            CHECK(line.way == Way::Assumed);
            CHECK_FALSE(line.weighed.empty());
        }
}

TEST_CASE("an assumption without a reason, or without grams, is refused where it stands",
          "[edit]") {
    const auto refused = [](const TypedAssumption& typed) {
        const auto edit = setAssumed(demo::skewers(), "oil", typed);
        REQUIRE_FALSE(edit);
        return std::pair{edit.error().code, edit.error().pointer.substr(9)};
    };
    using Refusal = std::pair<ErrorCode, std::string>;
    CHECK(refused({"40", "5", " "}) == Refusal{ErrorCode::EmptyText, "assumed/reason"});
    CHECK(refused({"0", "5", "by eye"}) == Refusal{ErrorCode::NotPositive, "assumed/grams"});
    CHECK(refused({"much", "5", "by eye"}) == Refusal{ErrorCode::NotADecimal, "assumed/grams"});
    CHECK(refused({"40", "-5", "x"}) == Refusal{ErrorCode::NegativeMass, "assumed/within"});
    CHECK(setAssumed(demo::skewers(), "nobody", {"1", "1", "x"}).error().code ==
          ErrorCode::UnknownReference);
}

TEST_CASE("a density is stated with its group and becomes the way", "[edit]") {
    const Json document = demo::skewers();
    const auto edit = setDensity(document, "oil", {"0.92", "0.01", "vegetable oils"});
    REQUIRE(edit);
    const Json after = *applied(document, edit->edit);
    const Json* line = valueAt(after, "/lines/oil/density");
    REQUIRE(line != nullptr);
    CHECK(writeJson(*line) == R"({"g_per_ml":"0.92","reason":"vegetable oils","within":"0.01"})");
    CHECK(*valueAt(after, "/lines/oil/way")->text() == "density");
    CHECK(applied(after, inverseOf(edit->edit)) == document);
}
