#include <catch2/catch.hpp>

#include "db/food_table.h"
#include "small_sr28.h"

using namespace nettare;

namespace {

FoodTable openTable(const SmallSr28& small) {
    auto table = FoodTable::open(small.table());
    REQUIRE(table);
    return std::move(*table);
}

TableFood foodOf(const FoodTable& table, std::string_view number) {
    const auto food = table.find(number);
    REQUIRE(food);
    REQUIRE(*food);
    return **food;
}

}  // namespace

TEST_CASE("a food keeps all that the publisher's rows say of it", "[import]") {
    const SmallSr28 small;
    const auto report = importTable(small.request());
    REQUIRE(report);
    CHECK(report->written);
    CHECK(report->path == small.table());
    CHECK(report->foods == 6);
    CHECK(report->values == 8);
    CHECK(report->measures == 5);
    CHECK(report->rejected == 0);
    const FoodTable table = openTable(small);
    CHECK(table.table() == "usda-sr");
    CHECK(table.release() == "28");
    const TableFood root = foodOf(table, "90001");
    CHECK(root.name == "Moonroots, raw");
    CHECK(root.group == "Vegetables and Vegetable Products");
    CHECK(root.otherNames == std::vector<std::string>{"lunar radish", "night root", "Luna rapum"});
    CHECK(root.refusePercent == 12);
    CHECK(root.refuseNote == "Tops and peel");
    CHECK(root.factors.nitrogen == 6.25);
    CHECK(root.factors.protein == 2.44);
    CHECK(root.factors.fat == 8.37);
    CHECK(root.factors.carbohydrate == 3.57);
    CHECK(root.profile[Component::PROCNT] == 1.25);
    CHECK(root.profile.spread[indexOf(Component::PROCNT)].standardError == 0.040);
    CHECK(root.profile.spread[indexOf(Component::PROCNT)].n == 9);
    CHECK(root.profile[Component::ENERC_KCAL] == 37);
    CHECK_FALSE(root.profile[Component::FAT]);
}

TEST_CASE("a value tells how it came about and what it rests on", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const auto values = openTable(small).values("90001");
    REQUIRE(values);
    REQUIRE(values->size() == 3);
    CHECK(values->at(1).tagname == "PROCNT");
    CHECK(values->at(1).number == "203");
    CHECK(values->at(1).derivation == "Analytical data");
    CHECK(values->at(1).source == "Analytical or derived from analytical");
    CHECK(values->at(0).derivation == "Calculated from others");
    CHECK(values->at(2).tagname == "STARCH");
    CHECK(values->at(2).name == "Starch");
    CHECK(values->at(2).per100g == 5.10);
    CHECK(values->at(2).n == 3);
}

TEST_CASE("vitamin D counts in micrograms, its units of effect are kept beside it", "[import]") {
    const SmallSr28 small;
    const auto report = importTable(small.request());
    REQUIRE(report);
    const FoodTable table = openTable(small);
    CHECK(foodOf(table, "90003").profile[Component::VITD] == 2.0);
    const auto values = table.values("90003");
    REQUIRE(values->size() == 3);
    CHECK(values->back().number == "324");
    CHECK(values->back().tagname.empty());
    CHECK(values->back().unit == "IU");
    CHECK(report->unnamedComponents ==
          std::map<std::string, std::size_t>{{"209", 1}, {"324", 1}, {"573", 1}});
}

TEST_CASE("measures come in our units, with their spread", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const FoodTable table = openTable(small);
    const auto measures = foodOf(table, "90001").measures;
    REQUIRE(measures.size() == 3);
    CHECK(measures[0].unit == "cup");
    CHECK(measures[0].qualifier == "sliced");
    CHECK(measures[0].grams == 116);
    CHECK(measures[0].n == 22);
    CHECK(measures[0].standardDeviation == 8.5);
    CHECK(measures[1].unit == "large moonroot");
    CHECK(measures[1].qualifier == "3 1/4 in diameter");
    CHECK(measures[2].unit == "tbsp");
    CHECK(measures[2].amount == 0.5);
    CHECK(measures[2].qualifier == "chopped");
}

TEST_CASE("bytes of Windows-1252 become the letters and quotes they stand for", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const FoodTable table = openTable(small);
    const TableFood bar = foodOf(table, "90004");
    CHECK(bar.name == "‘Starbar’, café style");
    REQUIRE(bar.measures.size() == 1);
    CHECK(bar.measures[0].unit == "café cookie");
    CHECK(table.values("90003")->at(1).unit == "µg");
}

TEST_CASE("rows stand best first: plain, processed, composed, branded", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const auto numbers = openTable(small).numbers();
    REQUIRE(numbers);
    REQUIRE(numbers->size() == 6);
    CHECK(numbers->at(0) == "90001");
    CHECK(numbers->back() == "90004");
}

TEST_CASE("only what is plainly a plant is taken for one", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const FoodTable table = openTable(small);
    CHECK(foodOf(table, "90001").plant);
    CHECK(foodOf(table, "90001").addedSugars.kind == AddedSugarKind::None);
    CHECK_FALSE(foodOf(table, "90003").plant);
    CHECK_FALSE(foodOf(table, "90005").plant);
    CHECK(foodOf(table, "90004").addedSugars.kind == AddedSugarKind::BetweenNoneAndAll);
    CHECK_FALSE(foodOf(table, "90004").addedSugars.reason.empty());
}
