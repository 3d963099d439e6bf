#include <catch2/catch.hpp>

#include <set>

#include "db/build_table/build_table.h"
#include "db/food_tables.h"
#include "scratch.h"
#include "small_table.h"
#include "starter.h"

namespace nettare {

namespace {

FoodTables openAll(const TablePlaces& places) {
    auto tables = FoodTables::open(places);
    REQUIRE(tables);
    return std::move(*tables);
}

}  // namespace

TEST_CASE("the groups of a table hold all of its foods", "[table][groups]") {
    const FoodTables tables = openAll({NETTARE_STARTER_TABLE});
    const auto groups = tables.groups();
    REQUIRE(groups);
    std::size_t foods = 0;
    for (const FoodGroup& group : *groups) {
        CHECK(group.table == "usda-sr");
        CHECK(group.foods > 0);
        foods += group.foods;
    }
    CHECK(foods == tables.size());
}

TEST_CASE("the foods of a group come page by page, each once, none of another group",
          "[table][groups]") {
    const FoodTables tables = openAll({NETTARE_STARTER_TABLE});
    const auto groups = tables.groups();
    REQUIRE(groups);
    for (const FoodGroup& group : *groups) {
        std::set<std::string> numbers;
        std::size_t seen = 0;
        GroupPage page;
        do {
            auto next = tables.page(group, page.next, 7);
            REQUIRE(next);
            page = std::move(*next);
            seen += page.hits.size();
            for (const FoodHit& hit : page.hits) {
                CHECK(hit.group == group.name);
                numbers.insert(hit.row.number);
            }
        } while (!page.last);
        CHECK(seen == group.foods);
        CHECK(numbers.size() == group.foods);
    }
}

TEST_CASE("a table that two files hold is listed once, by the fuller one", "[table][groups]") {
    const Scratch scratch;
    scratch.write("again.table", bytesOf(NETTARE_STARTER_TABLE));
    writeSmallTable(scratch);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const FoodTables tables = openAll({NETTARE_STARTER_TABLE, scratch.path("")});
    const auto groups = tables.groups();
    REQUIRE(groups);
    std::set<std::string> names;
    for (const FoodGroup& group : *groups)
        CHECK(names.insert(group.table + " " + group.name).second);
    CHECK(names.contains("small vegetable"));
}

TEST_CASE("a single row is shown as lists show it", "[table][groups]") {
    const FoodTables tables = openAll({NETTARE_STARTER_TABLE});
    const auto found = tables.hit({"usda-sr", "28", "11282"});
    REQUIRE(found);
    REQUIRE(*found);
    CHECK((*found)->row.number == "11282");
    CHECK((*found)->energyKcalPer100g == 40.0);
    CHECK((*found)->knownComponents > 30);
    CHECK_FALSE(*tables.hit({"usda-sr", "28", "99999"}));
    CHECK_FALSE(*tables.hit({"elsewhere", "1", "11282"}));
    CHECK(tables.page({"elsewhere", "1", "vegetable", 1}, 0, 5)->last);
}

}  // namespace nettare
