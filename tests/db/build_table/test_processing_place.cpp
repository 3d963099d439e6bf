#include <catch2/catch.hpp>
#include <utility>

#include "db/build_table/processing_place.h"
#include "db/build_table/row_order.h"

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
