#include "core/edit/line_edits.h"

#include <catch2/catch.hpp>

#include "core/edit/place.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"
#include "json_edit.h"

using namespace nettare;
using Names = std::vector<std::string>;

namespace {

/// A document under the hands of a cook: every edit is made, checked and can be taken back.
struct Draft {
    Json document = demo::skewers();
    Names unbound{};
    std::string line{};

    Draft& make(const Result<LineEdit>& made) {
        REQUIRE(made);
        const Json before = document;
        document = *applied(document, made->edit);
        REQUIRE(readRecipe(document));
        CHECK(*applied(document, inverseOf(made->edit)) == before);
        unbound = made->unbound;
        line = made->line;
        return *this;
    }
    [[nodiscard]] std::string at(const std::string& place) const {
        const Json* value = valueAt(document, place);
        return value == nullptr ? "nothing" : writeJson(*value);
    }
};

}  // namespace

TEST_CASE("a weighed line that gets another amount keeps what it was weighed for", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "oil", "4 tbsp"));
    CHECK(draft.at("/lines/oil/amount") == R"("4")");
    CHECK(draft.at("/lines/oil/weighed_for") == R"("3")");
    CHECK(draft.unbound.empty());
    draft.make(setLineAmount(draft.document, "oil", "5"));
    CHECK(draft.at("/lines/oil/weighed_for") == R"("3")");
    CHECK(draft.at("/lines/oil/unit") == R"("tbsp")");
    draft.make(setLineAmount(draft.document, "oil", "3"));
    CHECK(draft.document == demo::skewers());
}

TEST_CASE("grams that were assumed for one amount scale with another", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "lemon", "1 lemon"));
    CHECK(
        draft.at("/lines/lemon/assumed") ==
        R"({"for":"½","grams":"17","reason":"half a small lemon, pressed by hand","within":"6"})");
    CHECK(draft.unbound.empty());
    const auto lemonOf = [](const Json& document) {
        return *readRecipe(document)->lines.at(4).assumed;
    };
    CHECK(lemonOf(draft.document).grams == *Decimal::read("34"));
    CHECK(lemonOf(draft.document).within == *Decimal::read("12"));
    draft.make(setLineAmount(draft.document, "lemon", "1/4"));
    CHECK(draft.at("/lines/lemon/assumed/for") == R"("½")");
    CHECK(lemonOf(draft.document).grams == *Decimal::read("8.5"));
    draft.make(setLineAmount(draft.document, "lemon", "½"));
    CHECK(draft.document == demo::skewers());
}

TEST_CASE("an amount that grams were assumed for is read as strictly as any", "[edit]") {
    const auto refused = [](const std::string& amount, const std::string& then) {
        Json document = demo::skewers();
        valueAt(document, "/lines/lemon")->set("amount", Json{amount});
        valueAt(document, "/lines/lemon/assumed")->set("for", Json{then});
        const auto read = readRecipe(document);
        REQUIRE_FALSE(read);
        CHECK(read.error().pointer == "/lines/4/assumed/for");
        return read.error().code;
    };
    CHECK(refused("1", "some") == ErrorCode::NotAnAmount);
    CHECK(refused("1", "0") == ErrorCode::AmountNotPositive);
    CHECK(refused("999999999", "0.000001") == ErrorCode::AmountTooLong);
}

TEST_CASE("another unit or piece ends every binding and says which", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "oil", "40 g"));
    CHECK(draft.at("/lines/oil") == R"({"amount":"40","food":"olive-oil","id":"oil",)"
                                    R"("preparation":"for the marinade","unit":"g"})");
    CHECK(draft.unbound == Names{"weighed"});
    draft.make(setLineAmount(draft.document, "prawns", "300 g"));
    CHECK(draft.unbound == Names{"series"});
    draft.make(setLineAmount(draft.document, "lemon", "2 tbsp"));
    CHECK(draft.unbound == Names{"assumed", "way"});
    draft.make(setLineAmount(draft.document, "fennel", "3 bulbs"));
    CHECK(draft.unbound.empty());
    CHECK(draft.at("/lines/fennel/piece") == R"("bulb")");
    CHECK(draft.at("/lines/fennel/weighed_for") == R"("2")");
}

TEST_CASE("what is no amount yet stays in the draft, only an empty one does not", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "oil", "some"));
    CHECK(draft.at("/lines/oil/amount") == R"("some")");
    const auto empty = setLineAmount(draft.document, "oil", "  ");
    REQUIRE_FALSE(empty);
    CHECK(empty.error().code == ErrorCode::EmptyText);
    CHECK(empty.error().pointer == "/lines/oil/amount");
    CHECK(setLineAmount(draft.document, "oil", std::string(41, '1')).error().code ==
          ErrorCode::TextTooLong);
    CHECK(setLineAmount(draft.document, "water", "1").error().code == ErrorCode::UnknownReference);
}

TEST_CASE("a line gets the food of a table row, and an unused food goes", "[edit]") {
    Draft draft;
    draft.make(setLineFood(draft.document, "oil", demo::tableFood("04058", "Sesame oil")));
    CHECK(draft.at("/lines/oil/food") == R"("sesame-oil")");
    CHECK(draft.at("/foods/sesame-oil/table/number") == R"("04058")");
    CHECK(draft.at("/foods/olive-oil") == "nothing");
    CHECK(draft.unbound == Names{"weighed"});
    // The same row again is the same food; the salt line's own entry goes.
    draft.make(setLineFood(draft.document, "salt", demo::tableFood("04058", "other name")));
    CHECK(draft.at("/lines/salt/food") == R"("sesame-oil")");
    CHECK(draft.at("/foods/salt") == "nothing");
    draft.make(setLineFood(draft.document, "oil", {"garlic", {}, ""}));
    CHECK(draft.at("/foods/sesame-oil") != "nothing");
    const Json before = draft.document;
    draft.make(setLineFood(draft.document, "fennel", demo::tableFood("11957", "fennel")));
    CHECK(draft.document == before);
    CHECK_FALSE(setLineFood(draft.document, "oil", {"lard", {}, ""}));
    CHECK(setLineFood(draft.document, "oil", demo::tableFood("0 4", "x")).error().code ==
          ErrorCode::NotAnIdentifier);
}

TEST_CASE("a new line gets an id of its own and its food", "[edit]") {
    Draft draft;
    draft.make(addLine(draft.document, 0, "2 cloves", demo::tableFood("11215", "garlic"), ""));
    CHECK(draft.line == "garlic-2");
    CHECK(draft.at("/lines/garlic-2") ==
          R"({"amount":"2","food":"garlic","id":"garlic-2","piece":"clove"})");
    CHECK(draft.document.find("lines")->items()->front().find("id")->text()->compare("garlic-2") ==
          0);
    draft.make(addLine(draft.document, 8, "2", demo::tableFood("01123", "eggs, whole"), "beaten"));
    CHECK(draft.at("/lines/eggs-whole") ==
          R"({"amount":"2","food":"eggs-whole","id":"eggs-whole","piece":"egg",)"
          R"("preparation":"beaten"})");
    CHECK_FALSE(addLine(draft.document, 99, "2", demo::tableFood("01123", "eggs"), ""));
    CHECK(addLine(draft.document, 0, "", demo::tableFood("01123", "eggs"), "").error().code ==
          ErrorCode::EmptyText);
    CHECK(addLine(draft.document, 0, "1", demo::tableFood("01123", ""), "").error().code ==
          ErrorCode::EmptyText);
}

TEST_CASE("a line leaves residues and foods tidy behind it", "[edit]") {
    Draft draft;
    draft.make(removeLine(draft.document, "lemon"));
    CHECK(draft.at("/residues/0/mixture") == R"(["oil","garlic","paprika","salt"])");
    CHECK(draft.at("/foods/lemon-juice") == "nothing");
    for (const char* line : {"oil", "garlic", "paprika"})
        draft.make(removeLine(draft.document, line));
    CHECK(draft.at("/residues/0/mixture") == R"(["salt"])");
    draft.make(removeLine(draft.document, "salt"));
    CHECK(draft.at("/residues") == "nothing");
    CHECK(draft.at("/readings/marinade-left") != "nothing");
    draft.make(removeLine(draft.document, "prawns"));
    const auto last = removeLine(draft.document, "fennel");
    REQUIRE_FALSE(last);
    CHECK(last.error().code == ErrorCode::LastLine);
    CHECK(last.error().pointer == "/lines/0");
}

TEST_CASE("an amount typed over to taste, and to taste typed over an amount", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "salt", "to taste"));
    CHECK(readRecipe(draft.document)->lines.back().toTaste);
    draft.make(setLineAmount(draft.document, "salt", "2 pinches"));
    CHECK_FALSE(readRecipe(draft.document)->lines.back().toTaste);
    CHECK(readRecipe(draft.document)->lines.back().unit == "pinch");
    draft.make(setLineAmount(draft.document, "salt", "to taste"));
    draft.make(setLineAmount(draft.document, "salt", "3"));
    CHECK(readRecipe(draft.document)->lines.back().amount == "3");
    CHECK(readRecipe(draft.document)->lines.back().piece.has_value());
}

TEST_CASE("a pack goes with its piece word", "[edit]") {
    Draft draft;
    draft.make(setLineAmount(draft.document, "garlic", "2 x 400 g tins"));
    const std::string place = "/lines/garlic/each/amount";
    CHECK(*valueAt(draft.document, place)->text() == "400");
    draft.make(setLineAmount(draft.document, "garlic", "3 x 350 g tins"));
    CHECK(*valueAt(draft.document, place)->text() == "350");
    draft.make(setLineAmount(draft.document, "garlic", "3 cloves"));
    CHECK(valueAt(draft.document, place) == nullptr);
}

TEST_CASE("preparation, way and place of a line change by themselves", "[edit]") {
    Draft draft;
    draft.make(setPreparation(draft.document, "salt", "fine"));
    CHECK(draft.at("/lines/salt/preparation") == R"("fine")");
    draft.make(setPreparation(draft.document, "salt", " "));
    CHECK(draft.at("/lines/salt/preparation") == "nothing");
    draft.make(setWay(draft.document, "oil", Way::Label));
    CHECK(draft.at("/lines/oil/way") == R"("label")");
    draft.make(setWay(draft.document, "oil", std::nullopt));
    draft.make(moveLine(draft.document, "salt", 0));
    CHECK(*draft.document.find("lines")->items()->front().find("id")->text() == "salt");
    draft.make(moveLine(draft.document, "salt", 6));
    CHECK(draft.document == demo::skewers());
    CHECK_FALSE(moveLine(draft.document, "salt", 7));
}
