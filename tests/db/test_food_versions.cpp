#include <catch2/catch.hpp>
#include <set>

#include "core/food/table_food_json.h"
#include "starter.h"

using namespace nettare;

TEST_CASE("every starter food comes back from its version, and no two versions are the same",
          "[starter]") {
    const FoodTable table = openStarter();
    std::set<std::string> versions;
    const auto numbers = starterNumbers();
    REQUIRE(numbers.size() > 100);
    for (const std::string& number : numbers) {
        INFO(number);
        const TableFood food = foodIn(table, number);
        const std::string text = writeJson(tableFoodJson(food));
        const auto parsed = parseJson(text);
        REQUIRE(parsed);
        const auto read = readTableFood(*parsed);
        REQUIRE(read);
        CHECK(writeJson(tableFoodJson(*read)) == text);
        CHECK(read->profile.per100g == food.profile.per100g);
        CHECK(read->otherNames == food.otherNames);
        versions.insert(foodVersion(food));
    }
    CHECK(versions.size() == numbers.size());
}
