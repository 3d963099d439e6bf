#include <catch2/catch.hpp>

#include "db/build_table/table_text.h"
#include "scratch.h"
#include "small_table.h"

using namespace nettare;

TEST_CASE("a folder of text tables is read into foods by number", "[text]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    const auto text = readTableText(scratch.path(""));
    REQUIRE(text);
    CHECK(text->table == "small");
    CHECK(text->release == "1");
    CHECK(text->citation == "Invented for tests.");
    CHECK(text->everyday == std::vector<std::string>{"00002"});
    REQUIRE(text->foods.size() == 2);
    CHECK(text->foods[0].row.number == "00001");
    CHECK(text->foods[0].profile[Component::WATER] == 88.29);
    CHECK_FALSE(text->foods[0].profile[Component::FAT]);
    CHECK(text->foods[1].group == "bread");
}

TEST_CASE("a line for one food goes before the line of its group", "[text]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    scratch.write("traits.txt",
                  "key|added|plant|reason\ngroup vegetable|none|yes|its own\n"
                  "00001|between|no|glazed\ngroup bread|all|no|sugar in the dough\n");
    const auto text = readTableText(scratch.path(""));
    REQUIRE(text);
    CHECK(text->foods[0].addedSugars.kind == AddedSugarKind::BetweenNoneAndAll);
    CHECK(text->foods[0].addedSugars.reason == "glazed");
    CHECK_FALSE(text->foods[0].plant);
    CHECK(text->foods[1].addedSugars.kind == AddedSugarKind::AllOfItsSugars);
}

TEST_CASE("the starter names the files it was made from by their digests", "[starter]") {
    const auto text = readTableText(NETTARE_RESOURCES "/starter");
    REQUIRE(text);
    CHECK(text->foods.size() == 597);
    REQUIRE(text->inputs.size() == 4);
    for (const TableInput& input : text->inputs) {
        CHECK(input.name.ends_with(".csv"));
        CHECK(input.sha256.size() == 64);
    }
}

TEST_CASE("the starter has at least 60 kitchen names of our own", "[starter]") {
    const auto text = readTableText(NETTARE_RESOURCES "/starter");
    REQUIRE(text);
    std::size_t names = 0;
    for (const TableFood& food : text->foods) names += food.otherNames.size();
    CHECK(names >= 158 + 60);  // 158 come with the table
}
