#include <catch2/catch.hpp>

#include "db/build_table/build_table.h"
#include "db/build_table/whole_file.h"
#include "db/food_table.h"
#include "scratch.h"
#include "small_table.h"

using namespace nettare;

TEST_CASE("a build that fails leaves no file", "[build]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    scratch.write("measures.txt", "not a table\n");
    CHECK_FALSE(buildTable(scratch.path(""), scratch.path("small.table")));
    CHECK_FALSE(scratch.has("small.table"));
    CHECK_FALSE(scratch.has("small.table.partial"));
}

TEST_CASE("a build that fails keeps the older file as it was", "[build]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const std::string older = scratch.read("small.table");
    scratch.write("foods.txt", "not a table\n");
    CHECK_FALSE(buildTable(scratch.path(""), scratch.path("small.table")));
    CHECK(scratch.read("small.table") == older);
    CHECK(FoodTable::open(scratch.path("small.table")));
}

TEST_CASE("a table is replaced, also while it is open", "[build]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const auto open = FoodTable::open(scratch.path("small.table"));
    REQUIRE(open);
    scratch.write("kitchen_names.txt", "number|name\n00001|Möhren\n");
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    CHECK(open->search("gajar", 1)->size() == 1);
    const auto again = FoodTable::open(scratch.path("small.table"));
    REQUIRE(again);
    CHECK(again->search("gajar", 1)->empty());
    CHECK(again->search("mohren", 1)->size() == 1);
}

TEST_CASE("the same text gives the same bytes", "[build]") {
    const Scratch scratch;
    REQUIRE(buildTable(NETTARE_RESOURCES "/starter", scratch.path("one.table")));
    REQUIRE(buildTable(NETTARE_RESOURCES "/starter", scratch.path("two.table")));
    CHECK(scratch.read("one.table") == scratch.read("two.table"));
    CHECK(scratch.read("one.table") == bytesOf(NETTARE_STARTER_TABLE));
}

TEST_CASE("a place where nothing can be written is an error", "[build]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    const auto built = buildTable(scratch.path(""), scratch.path("no folder/small.table"));
    REQUIRE_FALSE(built);
    CHECK(built.error().code == ErrorCode::FileNotWritable);
}

TEST_CASE("a file begun and left is gone, and what a broken run left is cleared", "[build]") {
    const Scratch scratch;
    scratch.write("some.partial", "left by a broken run");
    {
        const WholeFile file{scratch.path("some")};
        CHECK_FALSE(scratch.has("some.partial"));
        scratch.write("some.partial", "begun");
    }
    CHECK_FALSE(scratch.has("some.partial"));
    CHECK_FALSE(scratch.has("some"));
    WholeFile file{scratch.path("some")};
    CHECK_FALSE(file.putInPlace());
    scratch.write("some.partial", "whole");
    CHECK(file.putInPlace());
    CHECK(scratch.read("some") == "whole");
}
