#include <catch2/catch.hpp>
#include <set>

#include "core/quantity/decimal.h"
#include "starter.h"

using namespace nettare;

namespace {

std::optional<double> readField(const std::string& text) {
    return text == "-" ? std::nullopt : std::optional{Decimal::read(text)->value()};
}

}  // namespace

TEST_CASE("the starter holds 597 foods with 1,302 measures and 7,621 standard errors",
          "[starter]") {
    const FoodTable table = openStarter();
    CHECK(table.table() == "usda-sr");
    CHECK(table.release() == "28");
    CHECK(table.citation().find("Release 28") != std::string::npos);
    CHECK(table.size() == 597);
    std::size_t measures = 0;
    std::size_t spreads = 0;
    for (const std::string& number : starterNumbers()) {
        const TableFood food = foodIn(table, number);
        measures += food.measures.size();
        for (const Spread& spread : food.profile.spread)
            if (spread.standardError) ++spreads;
    }
    CHECK(measures == 1302);
    CHECK(spreads == 7621);
}

TEST_CASE("25 foods carry the values that the release prints", "[starter]") {
    const FoodTable table = openStarter();
    std::set<std::string> foods;
    for (const auto& row : starterCases("eye_cases.csv")) {
        INFO(row[0] << " " << row[1]);
        foods.insert(row[0]);
        const TableFood food = foodIn(table, row[0]);
        const Component component = *componentNamed(row[1]);
        CHECK(food.profile[component] == readField(row[2]));
        const Spread& spread = food.profile.spread[indexOf(component)];
        CHECK(spread.standardError == readField(row[4]));
        CHECK(spread.n == static_cast<int>(readField(row[3]).value_or(0)));
    }
    CHECK(foods.size() == 25);
}

TEST_CASE("a missing value stays missing and is never zero", "[starter]") {
    const FoodTable table = openStarter();
    // Counted over the input columns: 967 empty cells without ASH, none of them in ASH.
    std::size_t missing = 0;
    std::size_t missingTransFat = 0;
    for (const std::string& number : starterNumbers()) {
        const TableFood food = foodIn(table, number);
        for (const ComponentFacts& facts : allComponents())
            if (facts.component != Component::SUGAD && !food.profile[facts.component]) ++missing;
        if (!food.profile[Component::FATRN]) ++missingTransFat;
        CHECK_FALSE(food.profile[Component::SUGAD]);
    }
    CHECK(missing == 967);
    CHECK(missingTransFat == 225);
}

TEST_CASE("factors, refuse, measures and names come with the food", "[starter]") {
    const FoodTable table = openStarter();
    // FOOD_DES.txt and WEIGHT.txt of SR28 (citation in eye_cases.csv).
    const TableFood almonds = foodIn(table, "12061");
    CHECK(almonds.row.text() == "usda-sr 28 12061");
    CHECK(almonds.group == "nut");
    CHECK(almonds.factors.nitrogen == 5.18);
    CHECK(almonds.factors.protein == 3.47);
    CHECK(almonds.refusePercent == 60);
    CHECK(almonds.refuseNote == "shell, when bought in shell");
    const TableFood butter = foodIn(table, "01001");
    REQUIRE(butter.measures.size() == 4);
    CHECK(butter.measures[1].unit == "tbsp");
    CHECK(butter.measures[1].grams == 14.2);
    CHECK(butter.measures[1].qualifier.empty());
    CHECK(butter.measures[1].n == 0);
    CHECK_FALSE(butter.measures[1].standardDeviation);
    CHECK(foodIn(table, "11477").otherNames == std::vector<std::string>{"courgette"});
}

TEST_CASE("no factor is missing, also where the release prints 0.00 for it", "[starter]") {
    const FoodTable table = openStarter();
    const TableFood phyllo = foodIn(table, "18338");  // 7.10 g of protein, N factor printed 0.00
    CHECK_FALSE(phyllo.factors.nitrogen);
    CHECK_FALSE(phyllo.factors.protein);
    const TableFood shrimp = foodIn(table, "15270");
    CHECK_FALSE(shrimp.factors.nitrogen);
    CHECK_FALSE(foodIn(table, "15236").refusePercent);
}
