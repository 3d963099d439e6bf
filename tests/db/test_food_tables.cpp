#include "db/food_tables.h"

#include <catch2/catch.hpp>

#include "db/build_table/build_table.h"
#include "scratch.h"
#include "small_table.h"
#include "starter.h"

namespace nettare {

namespace {

FoodTables openTables(const TablePlaces& places) {
    auto tables = FoodTables::open(places);
    REQUIRE(tables);
    return std::move(*tables);
}

}  // namespace

TEST_CASE("foods that two tables hold count and show once", "[table]") {
    const Scratch scratch;
    scratch.write("again.table", bytesOf(NETTARE_STARTER_TABLE));
    const FoodTables tables = openTables({NETTARE_STARTER_TABLE, scratch.path("")});
    CHECK(tables.tables().size() == 2);
    CHECK(tables.size() == 597);
    const auto search = tables.search("onion", 20);
    REQUIRE(search);
    const auto onions = std::ranges::count(search->hits, "11282",
                                           [](const FoodHit& hit) { return hit.row.number; });
    CHECK(onions == 1);
}

TEST_CASE("foods of an imported table stand beside the starter's", "[table]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const FoodTables tables = openTables({NETTARE_STARTER_TABLE, scratch.path("")});
    CHECK(tables.size() == 599);
    const auto carrots = tables.find({"small", "1", "00001"});
    REQUIRE(carrots);
    REQUIRE(*carrots);
    CHECK((*carrots)->name == "carrots, raw");
    // Neither its row nor its table tells how its water varies.
    CHECK((*carrots)->profile.spread[indexOf(Component::WATER)].assumedRelative.value_or(0) > 0);
    CHECK_FALSE((*carrots)->profile.spread[indexOf(Component::NA)].assumedRelative);
    const auto other = tables.find({"small", "2", "00001"});
    REQUIRE(other);
    CHECK_FALSE(*other);
    const auto gajar = tables.search("gajar", 5);
    REQUIRE(gajar);
    REQUIRE_FALSE(gajar->hits.empty());
    CHECK(gajar->hits.front().row.table == "small");
}

TEST_CASE("an imported file that cannot be read is left out and told", "[table]") {
    const Scratch scratch;
    scratch.write("broken.table", "no table");
    scratch.write("notes.txt", "not looked at");
    const FoodTables tables = openTables({NETTARE_STARTER_TABLE, scratch.path("")});
    CHECK(tables.size() == 597);
    REQUIRE(tables.failures().size() == 1);
    CHECK(tables.failures().front().code == ErrorCode::NotATable);
    CHECK(tables.failures().front().file == scratch.path("broken.table"));
}

TEST_CASE("without a folder of imports there is the starter alone", "[table]") {
    CHECK(openTables({NETTARE_STARTER_TABLE}).size() == 597);
    CHECK(openTables({NETTARE_STARTER_TABLE, "/no/such/folder"}).size() == 597);
    CHECK_FALSE(FoodTables::open({"/no/such.table"}));
}

TEST_CASE("a food's values come with their units and data points", "[table]") {
    const auto values = openTables({NETTARE_STARTER_TABLE}).values({"usda-sr", "28", "11282"});
    REQUIRE(values);
    REQUIRE(values->size() > 30);
    CHECK(values->front().tagname == "WATER");
    CHECK(values->front().unit == "g");
    CHECK(values->front().per100g == 89.11);  // SR28, 11282
}

}  // namespace nettare
