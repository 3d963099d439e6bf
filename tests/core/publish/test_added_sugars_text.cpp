#include "core/publish/added_sugars_text.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

namespace nettare {

namespace {

using kitchen::Served;

std::string textOf(TableFood row, const AddedSugars& added) {
    row.addedSugars = added;
    Food food;
    food.name = row.name;
    food.table = std::move(row);
    food.addedSugars = added;
    return addedSugarsText(food, Served::orThrow(compositionOf(food, 0, {})));
}

}  // namespace

TEST_CASE("what counts as added is said with its amount and its reason", "[publish][sugars]") {
    using enum AddedSugarKind;
    CHECK(textOf(kitchen::fennel(), {None, 0, "plain single food"}) == "none (plain single food)");
    CHECK(textOf(kitchen::sugar(), {AllOfItsSugars, 0, "sugar"}) ==
          "all of its sugars: 99.8 g (sugar)");
    CHECK(textOf(kitchen::fennel(), {Stated, 2, "own recipe"}) == "2 g (own recipe)");
    CHECK(textOf(kitchen::fennel(), {BetweenNoneAndAll, 0, ""}) ==
          "between none and 3.93 g: nothing says what part is added");
    CHECK(textOf(kitchen::oliveOil(), {AllOfItsSugars, 0, ""}) == "none, since it has no sugars");
    TableFood unknown = kitchen::fennel();
    for (auto& value : unknown.profile.per100g) value.reset();
    CHECK(textOf(unknown, {AllOfItsSugars, 0, ""}) ==
          "between none and 100 g: nothing says what part is added");
}

TEST_CASE("added sugars that a package prints are its own word", "[publish][sugars]") {
    Food food;
    food.name = "jam";
    food.label = LabelFacts{};
    food.label->servingSize = Decimal{20, 0};
    food.label->amounts = {{Component::SUGAD, "12"}};
    CHECK(addedSugarsText(food, Served::orThrow(compositionOf(food, 0, {}))) ==
          "60 g by its label");
}

}  // namespace nettare
