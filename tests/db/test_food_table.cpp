#include <catch2/catch.hpp>
#include <filesystem>

#include "db/build_table/build_table.h"
#include "db/table_format.h"
#include "scratch.h"
#include "small_table.h"
#include "starter.h"

using namespace nettare;

namespace {

/// Places in the header of an SQLite file ("Database File Format", section 1.3), big-endian.
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;

std::string withNumberAt(std::string bytes, std::size_t at, int number) {
    for (std::size_t i = 0; i < 4; ++i)
        bytes[at + i] = static_cast<char>(static_cast<unsigned>(number) >> (8 * (3 - i)) & 0xFFU);
    return bytes;
}

/// The error of opening a file of that content.
Error openError(const std::string& content) {
    const Scratch scratch;
    scratch.write("some.table", content);
    const auto table = FoodTable::open(scratch.path("some.table"));
    REQUIRE_FALSE(table);
    CHECK(table.error().file == scratch.path("some.table"));
    return table.error();
}

}  // namespace

TEST_CASE("a file that is no table of ours is refused as such", "[table]") {
    const std::string starter = bytesOf(NETTARE_STARTER_TABLE);
    REQUIRE(starter.size() > 4096);
    CHECK(openError("").code == ErrorCode::NotATable);
    CHECK(openError("Onions, raw: 40 kcal\n").code == ErrorCode::NotATable);
    CHECK(openError(std::string(8192, 'x')).code == ErrorCode::NotATable);
    // Some other program's database.
    CHECK(openError(withNumberAt(starter, kApplicationIdAt, 0)).code == ErrorCode::NotATable);
}

TEST_CASE("a table of a later program is refused with both formats", "[table]") {
    const std::string starter = bytesOf(NETTARE_STARTER_TABLE);
    const Error error = openError(withNumberAt(starter, kUserVersionAt, kTableFormat + 1));
    CHECK(error.code == ErrorCode::NewerFormat);
    CHECK(error.value("found") == "4");
    CHECK(error.value("known") == "3");
}

TEST_CASE("a table of an earlier program asks to be made again", "[table]") {
    const std::string starter = bytesOf(NETTARE_STARTER_TABLE);
    const Error error = openError(withNumberAt(starter, kUserVersionAt, kTableFormat - 1));
    CHECK(error.code == ErrorCode::OlderTable);
    CHECK(error.value("found") == "2");
}

TEST_CASE("a format that never was is no table", "[table]") {
    const std::string starter = bytesOf(NETTARE_STARTER_TABLE);
    CHECK(openError(withNumberAt(starter, kUserVersionAt, 0)).code == ErrorCode::NotATable);
}

TEST_CASE("a missing file and a folder are unreadable", "[table]") {
    const Scratch scratch;
    for (const std::string& path : {scratch.path("absent.table"), scratch.path("")}) {
        const auto table = FoodTable::open(path);
        REQUIRE_FALSE(table);
        CHECK(table.error().code == ErrorCode::TableUnreadable);
    }
    CHECK_FALSE(scratch.has("absent.table"));
}

TEST_CASE("a table cut short gives an error, not figures", "[table]") {
    const std::string starter = bytesOf(NETTARE_STARTER_TABLE);
    const Scratch scratch;
    scratch.write("cut.table", std::string_view{starter}.substr(0, 8192));
    const auto table = FoodTable::open(scratch.path("cut.table"));
    REQUIRE_FALSE(table);
    CHECK(table.error().code == ErrorCode::TableUnreadable);
}

TEST_CASE("a table opens from a name with spaces, accents and signs", "[table]") {
    const Scratch scratch;
    const std::string path = scratch.path("my purée #1 50%?.table");
    scratch.write("my purée #1 50%?.table", bytesOf(NETTARE_STARTER_TABLE));
    const auto table = FoodTable::open(path);
    REQUIRE(table);
    CHECK(table->size() == 597);
    CHECK_FALSE(std::filesystem::exists(path + "-wal"));
    CHECK_FALSE(std::filesystem::exists(path + "-journal"));
}

TEST_CASE("the program finds the starter beside its own folder", "[table]") {
    CHECK(FoodTable::open(NETTARE_STARTER_FROM_PROGRAM));
}

TEST_CASE("a food is found by its number as printed, and by nothing else", "[table]") {
    FoodTable table = openStarter();
    CHECK(foodIn(table, "11282").name == "onion, raw");
    CHECK(foodIn(table, "01001").row == TableRow{"usda-sr", "28", "01001"});
    for (const char* number : {"1001", "", "99999", "onion, raw", "01001 "}) {
        const auto food = table.find(number);
        REQUIRE(food);
        CHECK_FALSE(*food);
    }
    const FoodTable moved = std::move(table);
    CHECK(foodIn(moved, "11282").group == "vegetable");
}

TEST_CASE("a small table keeps what its text says, to the last field", "[table]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const auto table = FoodTable::open(scratch.path("small.table"));
    REQUIRE(table);
    CHECK(table->size() == 2);
    const TableFood carrots = foodIn(*table, "00001");
    CHECK(carrots.refusePercent == 11);
    CHECK(carrots.factors.carbohydrate == 3.84);
    CHECK(carrots.plant);
    CHECK(carrots.profile[Component::NA] == 69);
    CHECK(carrots.profile.spread[indexOf(Component::NA)].standardError == 3.45);
    CHECK(carrots.otherNames == std::vector<std::string>{"garden carrots", "gajar"});
    REQUIRE(carrots.measures.size() == 1);
    CHECK(carrots.measures[0].gramsEach() == 122);
    CHECK(carrots.measures[0].qualifier == "sliced");
    CHECK(carrots.measures[0].n == 4);
    CHECK(carrots.measures[0].standardDeviation == 6.1);
    const TableFood cake = foodIn(*table, "00002");
    CHECK(cake.addedSugars.kind == AddedSugarKind::Stated);
    CHECK(cake.addedSugars.statedPer100g == 12.5);
    CHECK(cake.addedSugars.reason == "as the recipe says");
    CHECK_FALSE(cake.refusePercent);
    CHECK_FALSE(cake.factors.nitrogen);
    CHECK_FALSE(cake.profile[Component::NA]);
}
