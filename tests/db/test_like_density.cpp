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
    // The words in front tell more than the kind of food.
    const auto own = likeDensity(tables, "Hillside first-press oil");
    REQUIRE(*own);
    CHECK((*own)->of.ends_with(" measures of oil"));
    CHECK((*own)->least == (*oil)->least);
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
