#include <catch2/catch.hpp>
#include <string>
#include <tuple>
#include <utility>

#include "db/build_table/processing_place.h"
#include "db/build_table/row_order.h"
#include "db/build_table/row_rank.h"

using namespace nettare;

TEST_CASE("raw, fresh and dry staples are plain", "[order]") {
    CHECK(processingPlace("onion, raw", "vegetable") == ProcessingPlace::Plain);
    CHECK(processingPlace("lentils, dry", "pulse") == ProcessingPlace::Plain);
    CHECK(processingPlace("whole milk", "dairy") == ProcessingPlace::Plain);
    CHECK(processingPlace("apple juice, unsweetened", "juice") == ProcessingPlace::Processed);
}

TEST_CASE("cooking and preserving make a food processed", "[order]") {
    for (const char* name :
         {"carrots, boiled", "Atlantic cod, baked", "sun-dried tomatoes, dry",
          "onion, yellow, sautéed", "hard-boiled egg", "peaches, canned in juice"})
        CHECK(processingPlace(name, "vegetable") == ProcessingPlace::Processed);
}

TEST_CASE("sauces, sausages and breads are composed", "[order]") {
    for (const char* group : {"condiment", "sausage", "bread", "stock", "chocolate"})
        CHECK(processingPlace("anything, raw", group) == ProcessingPlace::Composed);
}

TEST_CASE("the names of public tables tell the place of a food", "[order]") {
    using Place = ProcessingPlace;
    for (const auto& [name, group, place] :
         {std::tuple{"Onions, raw", "Vegetables and Vegetable Products", Place::Plain},
          {"Lentils, mature seeds, raw", "Legumes and Legume Products", Place::Plain},
          {"Chicken, broilers or fryers, breast, meat only, cooked, fried", "Poultry Products",
           Place::Processed},
          {"Soup, onion, dry, mix", "Soups, Sauces, and Gravies", Place::Composed},
          {"Salad dressing, mayonnaise, regular", "Fats and Oils", Place::Composed},
          {"Babyfood, vegetables, carrots, strained", "Baby Foods", Place::Branded},
          {"Babyfood, carrots", "other", Place::Branded},
          {"Fast foods, potato, french fried", "other", Place::Branded},
          {"Restaurant, Chinese, lemon chicken", "Restaurant Foods", Place::Branded},
          {"Snacks, potato chips, PRINGLES", "Snacks", Place::Branded},
          {"McDONALD'S, Hamburger", "other", Place::Branded},
          {"Milk, UHT", "milk", Place::Plain},
          {"ONIONS RAW", "vegetable", Place::Plain}}) {
        INFO(name);
        CHECK(processingPlace(name, group) == place);
    }
}

TEST_CASE("a table's rows go by place, then by what their names add", "[order]") {
    const auto rank = [](const char* name) {
        return rowRank({.name = name, .group = "x", .place = processingPlace(name, "x")});
    };
    CHECK(rank("Onions, raw") < rank("Onions, sweet, raw"));
    CHECK(rank("Onions, raw") < rank("Onions, sweet (mild)"));
    CHECK(rank("Onions, sweet, raw") < rank("Onions, boiled"));
    CHECK(rank(std::string(1000, ',').c_str()) < rank("Onions, boiled"));
    RankedRow everyday{.name = "Onions, sweet, raw", .group = "x", .everyday = 7};
    CHECK(rowRank(everyday) < rank("Onions"));
}

TEST_CASE("everyday foods lead their place, the others follow by number", "[order]") {
    TableText text;
    for (const auto& [number, name] : {std::pair{"1", "beans, boiled"},
                                       {"2", "cress"},
                                       {"3", "dill"},
                                       {"4", "eggs"},
                                       {"5", "eggs, boiled"}}) {
        TableFood food;
        food.row.number = number;
        food.name = name;
        food.group = "vegetable";
        text.foods.push_back(food);
    }
    text.everyday = {"5", "4", "3"};
    std::string order;
    for (const TableFood* food : inRowOrder(text)) order += food->row.number;
    CHECK(order == "43251");
}
