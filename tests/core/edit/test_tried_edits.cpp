#include "core/edit/tried_edits.h"

#include <catch2/catch.hpp>

#include "core/edit/place.h"
#include "core/edit/scaled_amount.h"
#include "core/nutrition/what_if.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"
#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

std::string scaled(const char* amount, double factor, AmountForm form = AmountForm::Kitchen,
                   Direction direction = Direction::Nearest) {
    return scaledAmount(*readAmount(amount), factor, form, direction);
}

std::string amountAt(const Json& document, const std::string& place) {
    const Json* value = valueAt(document, place);
    return value == nullptr ? "nothing" : writeJson(*value);
}

/// The document after the edit, which can be taken back at once.
Json takenOver(const Json& document, const std::vector<TriedAmount>& amounts) {
    const auto edit = takeOverAmounts(document, amounts);
    REQUIRE(edit);
    Json after = *applied(document, *edit);
    REQUIRE(readRecipe(after));
    CHECK(*applied(after, inverseOf(*edit)) == document);
    return after;
}

}  // namespace

TEST_CASE("a tried amount is written as a cook measures it, else as a decimal", "[edit]") {
    CHECK(scaled("3", 0.5) == "1 1/2");
    CHECK(scaled("1/2", 0.5) == "1/4");
    CHECK(scaled("3", 0.8333) == "2 1/2");
    CHECK(scaled("3", 0.81) == "2.43");
    CHECK(scaled("3", 0.5, AmountForm::Decimal) == "1.5");
    CHECK(scaled("400", 0.8333, AmountForm::Decimal) == "333.32");
    CHECK(scaled("2-3", 1.25) == "2 1/2-3 3/4");
    CHECK(scaled("1/3", 2) == "2/3");
    CHECK(scaled("2", 4) == "8");
    // "2.333" could be two thousand and more.
    CHECK(scaled("3", 0.7777) == "2.3330");
    CHECK(scaled("1/3", 0.8333) == "0.277767");
}

TEST_CASE("an amount that must not be more is never rounded up", "[edit]") {
    CHECK(scaled("3", 0.83339, AmountForm::Decimal, Direction::Floor) == "2.5");
    CHECK(scaled("3", 0.8333, AmountForm::Decimal, Direction::Floor) == "2.4990");
    CHECK(scaled("3", 0.8333, AmountForm::Decimal, Direction::Ceiling) == "2.5");
    CHECK(scaled("1", 1e-9, AmountForm::Decimal, Direction::Floor) == "0.000001");
}

TEST_CASE("tried amounts of several lines are taken over as one edit", "[edit]") {
    const Json before = demo::skewers();
    const auto edit = takeOverAmounts(before, {{"oil", 0.5}, {"garlic", 2}, {"lemon", 1.5}});
    REQUIRE(edit);
    CHECK(edit->kind == EditKind::Amount);
    CHECK(edit->subject == "olive oil, garlic, lemon juice");
    const Json after = takenOver(before, {{"oil", 0.5}, {"garlic", 2}, {"lemon", 1.5}});
    CHECK(amountAt(after, "/lines/oil/amount") == R"("1 1/2")");
    CHECK(amountAt(after, "/lines/oil/weighed_for") == R"("3")");
    CHECK(amountAt(after, "/lines/garlic/amount") == R"("4")");
    CHECK(amountAt(after, "/lines/lemon/amount") == R"("3/4")");
    CHECK(amountAt(after, "/lines/lemon/assumed/for") == R"("½")");
}

TEST_CASE("a line tried with nothing is taken away, out of its residue too", "[edit]") {
    const Json after = takenOver(demo::skewers(), {{"garlic", 0}, {"oil", 2}});
    CHECK(amountAt(after, "/lines/garlic") == "nothing");
    CHECK(amountAt(after, "/lines/oil/amount") == R"("6")");
}

TEST_CASE("the amount that is said once more scales as well", "[edit]") {
    Kitchen kitchen = Kitchen{}.line(R"({"id":"a","amount":"1","unit":"cup","food":"sugar",
        "equals":{"amount":"120","unit":"g"}})");
    const Json after = takenOver(kitchen.document(), {{"a", 1.5}});
    CHECK(amountAt(after, "/lines/a/amount") == R"("1 1/2")");
    CHECK(amountAt(after, "/lines/a/equals") == R"({"amount":"180","unit":"g"})");
}

TEST_CASE("what is taken over has the figures that were tried", "[edit]") {
    Kitchen kitchen;
    kitchen.reading("r", "50");
    kitchen.line(R"({"id":"w","amount":"3","unit":"tbsp","food":"oil","weighed":["r"]})");
    kitchen.line(R"({"id":"g","amount":"120","unit":"g","food":"fennel"})");
    kitchen.line(R"({"id":"t","amount":"3","unit":"tsp","food":"sugar"})");
    kitchen.line(R"({"id":"a","amount":"1/2","piece":"lot","food":"fennel",
        "assumed":{"grams":"80","within":"15","reason":"by eye"}})");
    const std::vector<double> factors{0.7777, 1.234, 0.35, 2.5};
    std::vector<TriedAmount> amounts;
    std::vector<ChangedLine> changes;
    const char* ids[] = {"w", "g", "t", "a"};
    for (std::size_t i = 0; i < factors.size(); ++i) {
        amounts.push_back({ids[i], factors[i]});
        changes.push_back({i, factors[i]});
    }
    Kitchen after = kitchen;
    after.json("lines", writeJson(*takenOver(kitchen.document(), amounts).find("lines")));
    const Served written{after};
    const Cooked tried =
        Served::orThrow(cook(withChanges(Served::orThrow(kitchen.dossier()), changes)));
    for (std::size_t i = 0; i < factors.size(); ++i)
        CHECK(written.cooked.lines[i].asUsed.value() ==
              Approx(tried.lines[i].asUsed.value()).epsilon(5e-4));
}

TEST_CASE("a line without an amount cannot be scaled", "[edit]") {
    const Kitchen kitchen = Kitchen{}.line(R"({"id":"s","to_taste":true,"food":"sugar"})");
    const auto edit = takeOverAmounts(kitchen.document(), {{"s", 2}});
    REQUIRE_FALSE(edit);
    CHECK(edit.error().code == ErrorCode::NotAnAmount);
    CHECK(edit.error().value("found") == "to taste");
    CHECK(edit.error().pointer == "/lines/s/amount");
    CHECK(takeOverAmounts(kitchen.document(), {{"x", 2}}).error().code ==
          ErrorCode::UnknownReference);
    CHECK(takeOverAmounts(kitchen.document(), {{"s", 0}}).error().code == ErrorCode::LastLine);
}
