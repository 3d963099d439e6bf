#include <catch2/catch.hpp>

#include "app/pantry/compared_foods.h"
#include "app/pantry/food_values.h"
#include "app/pantry/food_words.h"

#include <algorithm>

namespace nettare {

namespace {

using enum Component;

TableFood plainFood(double protein, std::optional<double> standardError = {}) {
    TableFood food;
    food.row = {"usda-sr", "28", "11957"};
    food.name = "fennel";
    food.profile.per100g[indexOf(PROCNT)] = protein;
    food.profile.spread[indexOf(PROCNT)].standardError = standardError;
    food.profile.spread[indexOf(PROCNT)].n = standardError ? 5 : 0;
    food.profile.per100g[indexOf(SUGAR)] = 4;
    food.addedSugars = {AddedSugarKind::BetweenNoneAndAll, 0, "cannot be told"};
    return food;
}

const ValueRow& rowCalled(const std::vector<ValueRow>& rows, const char* name) {
    const auto found = std::ranges::find(rows, QString::fromLatin1(name), &ValueRow::name);
    REQUIRE(found != rows.end());
    return *found;
}

const ComparedComponent& protein(const std::vector<ComparedComponent>& rows) {
    const auto found = std::ranges::find(rows, QStringLiteral("Protein"), &ComparedComponent::name);
    REQUIRE(found != rows.end());
    return *found;
}

}  // namespace

TEST_CASE("a published value says how it came about, with its samples and half its interval") {
    const std::vector<FoodValue> published{
        {"PROCNT", "203", "protein", "g", 1.24, 0.05, 5, "Analytical data", ""},
        {"", "605", "fatty acids, other", "g", 0.01, {}, 0, "Calculated", ""}};
    const auto rows = valueRows(plainFood(1.24, 0.05), published);
    const ValueRow& row = rowCalled(rows, "Protein");
    CHECK(plainText(row.value) == QStringLiteral("1.24 g"));
    // t(0.975; 4) x 0.05 = 2.776 x 0.05 = 0.139
    CHECK(plainText(row.spread) == QStringLiteral("0.14"));
    CHECK(row.how == QStringLiteral("analytical data, 5 samples"));
    CHECK(rowCalled(rows, "Fat").value.kind == CellKind::NoData);
    CHECK(rowCalled(rows, "Fat").how == QStringLiteral("not in the table"));
    CHECK(rows.back().name == QStringLiteral("fatty acids, other"));
    CHECK(rows.back().how == QStringLiteral("calculated"));
}

TEST_CASE("added sugars are told by the food's rule, with its reason") {
    TableFood food = plainFood(1);
    CHECK(plainText(rowCalled(valueRows(food, {}), "Added sugars").value) ==
          QStringLiteral("0 to 4 g"));
    food.addedSugars = {AddedSugarKind::AllOfItsSugars, 0, "a syrup"};
    CHECK(plainText(rowCalled(valueRows(food, {}), "Added sugars").value) == QStringLiteral("4 g"));
    CHECK(rowCalled(valueRows(food, {}), "Added sugars").how == QStringLiteral("a syrup"));
    food.profile.per100g[indexOf(SUGAR)].reset();
    CHECK(rowCalled(valueRows(food, {}), "Added sugars").value.kind == CellKind::NoData);
    food.addedSugars = {AddedSugarKind::None, 0, "plain single food"};
    CHECK(plainText(rowCalled(valueRows(food, {}), "Added sugars").value) == QStringLiteral("0 g"));
}

TEST_CASE("an energy that is there in one unit is shown converted in the other, and says so") {
    TableFood food = plainFood(1);
    food.profile.per100g[indexOf(ENERC_KCAL)] = 100;
    const ValueRow row = rowCalled(valueRows(food, {}), "Energy in kJ");
    CHECK(plainText(row.value) == QStringLiteral("418 kJ"));
    CHECK(row.how == QStringLiteral("converted from kcal, × 4.184"));
}

TEST_CASE(
    "foods differ where their intervals part, are told within them, and say what is missing") {
    const auto apart = comparedComponents({plainFood(1.2, 0.01), plainFood(3.4, 0.01)});
    CHECK(plainText(protein(apart).differs) == QStringLiteral("1.2 to 3.4 g"));
    CHECK(plainText(protein(apart).values[0]) == QStringLiteral("↓ 1.2"));
    CHECK(plainText(protein(apart).values[1]) == QStringLiteral("↑ 3.4"));
    const auto near = comparedComponents({plainFood(1.2, 0.1), plainFood(1.3, 0.1)});
    CHECK(plainText(protein(near).differs) == QStringLiteral("within ±"));
    const auto same = comparedComponents({plainFood(1.2), plainFood(1.2)});
    CHECK(protein(same).same);
    TableFood without = plainFood(1.2);
    without.profile.per100g[indexOf(PROCNT)].reset();
    const auto missing = comparedComponents({plainFood(1.2), without, plainFood(1.2)});
    CHECK(plainText(protein(missing).differs) == QStringLiteral("same, no data for 1 of 3"));
    CHECK(protein(missing).values[1].kind == CellKind::NoData);
}

TEST_CASE("the head of the pantry counts the foods of each table and the own ones") {
    CHECK(pantryCounts({{QStringLiteral("SR28"), 8789}}, 0, 12) ==
          QStringLiteral("8\u202F801 foods · 8\u202F789 from SR28, 12 own"));
    CHECK(pantryCounts({{QStringLiteral("SR28"), 8789}}, 41, 12) ==
          QStringLiteral("8\u202F842 foods · 8\u202F789 from SR28, 41 labels, 12 own"));
    CHECK(groupedCount(2'000'000) == QStringLiteral("2\u202F000\u202F000"));
    CHECK(slipText({{"courgete", {"courgette", "zucchini"}}}) ==
          QStringLiteral("one slip forgiven: courgette, also zucchini"));
    CHECK(slipText({}).isEmpty());
}

}  // namespace nettare
