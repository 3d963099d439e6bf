#include "db/like_density.h"

#include <catch2/catch.hpp>

#include "starter.h"

namespace nettare {

namespace {

FoodTables starterTables() {
    auto tables = FoodTables::open(NETTARE_STARTER_TABLE);
    REQUIRE(tables);
    return std::move(*tables);
}

}  // namespace

TEST_CASE("foods like a labelled one say what a millilitre of it may weigh", "[label]") {
    const FoodTables tables = starterTables();
    const auto oil = likeDensity(tables, "Oil, cold pressed");
    REQUIRE(oil);
    REQUIRE(*oil);
    // USDA SR28: oils weigh 205 to 224 g a cup of 236.6 mL.
    CHECK((*oil)->least > 0.86);
    CHECK((*oil)->most < 0.98);
    CHECK((*oil)->least <= (*oil)->most);
    CHECK((*oil)->of.ends_with(" measures of oil"));
}

TEST_CASE("a food is not like another that its last word names", "[label]") {
    const FoodTables tables = starterTables();
    for (const char* name : {"Hillside first-press oil", "Cauliflower rice", "Thick set yogurt"}) {
        INFO(name);
        const auto like = likeDensity(tables, name);
        REQUIRE(like);
        CHECK_FALSE(*like);
    }
}

TEST_CASE("light and dense products are as printed, and a moved decimal point still shows",
          "[label]") {
    const FoodTables tables = starterTables();
    struct Measured {
        const char* name;
        const char* amount;
        const char* unit;
        const char* grams;
    };
    const auto findingsOf = [&](const Measured& food) {
        const auto like = likeDensity(tables, food.name);
        REQUIRE(like);
        LabelFacts label;
        label.servingSize = Decimal::read(food.grams);
        label.householdAmount = *readAmount(food.amount);
        label.householdUnit = food.unit;
        return checkLabel(label, *like);
    };
    for (const Measured& food :
         {Measured{"Puffed rice", "1", "cup", "14"}, Measured{"Popcorn", "3", "cup", "28"},
          Measured{"Cauliflower rice", "1", "cup", "85"},
          Measured{"Whipped butter", "1", "tbsp", "9"},
          Measured{"Butter, whipped", "1", "tbsp", "9"},
          Measured{"Instant coffee", "1", "tsp", "1"}, Measured{"Cocoa powder", "1", "tbsp", "5"},
          Measured{"Whipped cream", "2", "tbsp", "6"}, Measured{"Yoghurt", "3/4", "cup", "170"},
          Measured{"Honey", "1", "tbsp", "21"}}) {
        INFO(food.name);
        CHECK(findingsOf(food).empty());
    }
    for (const Measured& food :
         {Measured{"Butter", "1", "tbsp", "140"}, Measured{"Hazel spread", "1", "tbsp", "140"},
          Measured{"Oil", "1", "tbsp", "1.4"}, Measured{"Popcorn", "3", "cup", "2.8"}}) {
        INFO(food.name);
        const auto findings = findingsOf(food);
        REQUIRE(findings.size() == 1);
        CHECK(findings.front().kind == LabelFindingKind::UnlikeMeasure);
    }
}

TEST_CASE("nothing is like a food that the tables do not know", "[label]") {
    const FoodTables tables = starterTables();
    for (const char* name : {"", " , ", "moon dust", "…", "xyzzy"}) {
        INFO(name);
        const auto like = likeDensity(tables, name);
        REQUIRE(like);
        CHECK_FALSE(*like);
    }
    CHECK(likeDensity(tables, std::string(10'000, 'x')));
}

}  // namespace nettare
