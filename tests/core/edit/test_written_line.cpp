#include "core/edit/written_line.h"

#include <catch2/catch.hpp>

#include "core/edit/place.h"
#include "core/recipe/read_recipe.h"
#include "core/wording/read_line.h"
#include "demo.h"

using namespace nettare;

namespace {

/// The line that a text becomes in the demo's skewers, as JSON without id and food.
std::string lineOf(const std::string& text, const std::string& food = "tomato") {
    const Json document = demo::skewers();
    const auto edit = addWrittenLine(document, 0, readLine(text), demo::tableFood("11529", food));
    INFO(text);
    REQUIRE(edit);
    const Json after = *applied(document, edit->edit);
    REQUIRE(readRecipe(after));
    Json line = *valueAt(after, "/lines/" + edit->line);
    CHECK(*line.find("written")->text() == text);
    Json rest = Json::object();
    for (const JsonMember& member : *line.members())
        if (member.key != "id" && member.key != "food" && member.key != "written")
            rest.set(member.key, member.value);
    return writeJson(rest);
}

ErrorCode refusalOf(const std::string& text) {
    const auto edit =
        addWrittenLine(demo::skewers(), 0, readLine(text), demo::tableFood("11529", "tomato"));
    REQUIRE_FALSE(edit);
    return edit.error().code;
}

}  // namespace

TEST_CASE("a written line brings its amount, its pack and what it says of its weight", "[edit]") {
    CHECK(lineOf("1/3 cup tahini, stirred") ==
          R"({"amount":"1/3","preparation":"stirred","unit":"cup"})");
    CHECK(
        lineOf("2 x 400 g tins tomatoes, drained") ==
        R"({"amount":"2","each":{"amount":"400","unit":"g"},"piece":"tin","preparation":"drained"})");
    CHECK(lineOf("1 cup (120 g) flour") ==
          R"({"amount":"1","equals":{"amount":"120","unit":"g"},"unit":"cup"})");
    CHECK(lineOf("1 heaping tbsp tomato paste") ==
          R"({"amount":"1","fill":"heaping","unit":"tbsp"})");
    CHECK(lineOf("2 large tomatoes (optional)", "tomatoes, red") ==
          R"({"amount":"2","optional":true,"piece":"tomato","size":"large"})");
    CHECK(lineOf("a dozen tomatoes") == R"({"amount":"12","piece":"tomato"})");
}

TEST_CASE("a line without an amount is to taste", "[edit]") {
    CHECK(lineOf("salt to taste") == R"({"to_taste":true})");
    CHECK(lineOf("freshly ground black pepper") == R"({"to_taste":true})");
}

TEST_CASE("butter the size of a walnut is one piece of that size", "[edit]") {
    CHECK(lineOf("butter the size of a walnut", "butter") ==
          R"({"amount":"1","piece":"piece","size":"the size of a walnut"})");
}

TEST_CASE("an alternative stays with the line", "[edit]") {
    CHECK(lineOf("2 tbsp butter or oil, melted", "butter") ==
          R"({"amount":"2","preparation":"melted, or oil","unit":"tbsp"})");
}

TEST_CASE("what may mean two things is asked before the line is added", "[edit]") {
    CHECK(refusalOf("8 oz tomatoes") == ErrorCode::UnitAsked);
    CHECK(refusalOf("1 (14.5 oz) can tomatoes") == ErrorCode::UnitAsked);
    CHECK(refusalOf("1,500 g tomatoes") == ErrorCode::AmountAmbiguous);
}

TEST_CASE("a kept recipe is written on a line by batches, its own pieces or its weight", "[edit]") {
    const auto written = [](const std::string& text) {
        const Json document = demo::skewers();
        const FoodChoice choice{{}, {}, "sauce", "sauce#2"};
        const auto edit = addWrittenLine(document, 0, readLine(text), choice);
        INFO(text);
        REQUIRE(edit);
        const Json after = *applied(document, edit->edit);
        REQUIRE(readRecipe(after));
        CHECK(writeJson(*valueAt(after, "/foods/sauce")) ==
              R"({"id":"sauce","name":"sauce","recipe":"sauce#2"})");
        const Json line = *valueAt(after, "/lines/" + edit->line);
        const Json* unit = line.find("unit");
        return *line.find("amount")->text() + " " +
               *(unit != nullptr ? unit : line.find("piece"))->text();
    };
    CHECK(written("sauce") == "1 batch");
    CHECK(written("2 sauce") == "2 batch");
    CHECK(written("150 g sauce") == "150 g");
    CHECK(written("1/2 batch sauce") == "1/2 batch");
}

TEST_CASE("a kept recipe that the document has already is used again", "[edit]") {
    const Json document = demo::skewers();
    const FoodChoice choice{{}, {}, "sauce", "sauce#2"};
    const auto first = addWrittenLine(document, 0, readLine("sauce"), choice);
    REQUIRE(first);
    const Json once = *applied(document, first->edit);
    const auto second = addWrittenLine(once, 0, readLine("100 g sauce"), choice);
    REQUIRE(second);
    const Json twice = *applied(once, second->edit);
    CHECK(twice.find("foods")->items()->size() == once.find("foods")->items()->size());
}
