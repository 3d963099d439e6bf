#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>

#include "core/support/text.h"
#include "db/build_table/build_sentence.h"
#include "db/build_table/build_table.h"
#include "db/kitchen/kitchen.h"
#include "scratch.h"
#include "small_table.h"

using namespace nettare;

namespace {

struct BadInput {
    const char* file;
    std::string from;  ///< what a good file says
    std::string to;    ///< what the bad one says instead
    ErrorCode code;
    const char* sentence;
};

const std::vector<BadInput>& badInputs() {
    static const std::vector<BadInput> kInputs{
        {"foods.txt", "|11|", "|111|", ErrorCode::OutOfRange,
         "foods.txt:2: \"111\" (column refuse_percent) is out of range."},
        {"foods.txt", "00002|carrot", "00001|carrot", ErrorCode::DuplicateId,
         "foods.txt:3: \"00001\" (column number) is there twice."},
        {"foods.txt", "|8.37|", "|8,37|", ErrorCode::NotADecimal,
         "foods.txt:2: \"8,37\" (column fat_kcal_per_g) must be a decimal number, or - where it is "
         "missing."},
        {"foods.txt", "carrots, raw", "-", ErrorCode::EmptyText,
         "foods.txt:2: \"-\" (column name) must not be missing."},
        {"components.txt", "00002|", "00003|", ErrorCode::FoodNotFound,
         "components.txt:3: \"00003\" (column number) is the number of no food in foods.txt."},
        {"components.txt", valuesLine("00002", {{Component::WATER, "20"}}), "",
         ErrorCode::MissingKey, "components.txt: there is no line for \"00002\"."},
        {"spreads.txt", "|NA|", "|SALT|", ErrorCode::ComponentUnknown,
         "spreads.txt:2: \"SALT\" (column tagname) is no tagname that we know."},
        {"spreads.txt", "|NA|", "|FAT|", ErrorCode::UnknownReference,
         "spreads.txt:2: \"FAT\" (column tagname) has no value of this food in components.txt."},
        {"spreads.txt", "|16|", "|-|", ErrorCode::EmptyText,
         "spreads.txt:2: \"3.45\" (column standard_error) must not be missing."},
        {"measures.txt", "|61|", "|0|", ErrorCode::NotPositive,
         "measures.txt:2: \"0\" (column grams) must be above zero."},
        {"measures.txt", "sliced|", "", ErrorCode::WrongFormat,
         "measures.txt:2: expected 7 fields or columns, found 6."},
        {"kitchen_names.txt", "gajar", "garden carrots", ErrorCode::DuplicateId,
         "kitchen_names.txt:2: \"garden carrots\" (column name) is there twice."},
        {"traits.txt", "none", "some", ErrorCode::NotOneOf,
         "traits.txt:3: \"some\" (column added) is none of the words that may stand here."},
        {"traits.txt", "12.5", "112.5", ErrorCode::OutOfRange,
         "traits.txt:2: \"112.5\" (column added) is out of range."},
        {"traits.txt", "group bread", "group cake", ErrorCode::MissingKey,
         "traits.txt: there is no line for \"group bread\"."},
        {"everyday.txt", "00002", "00009", ErrorCode::FoodNotFound,
         "everyday.txt:2: \"00009\" (column number) is the number of no food in foods.txt."},
        {"table.txt", "citation|Invented for tests.\n", "", ErrorCode::MissingKey,
         "table.txt: there is no line for \"citation\"."},
        {"table.txt", "# invented\nkey|value\n", "key|value\nsha256 of a.csv|12ab\n",
         ErrorCode::NotAnIdentifier,
         "table.txt:2: \"12ab\" (column value) must be 64 hexadecimal digits in lower case."},
        {"table.txt", "release|", "edition|", ErrorCode::NotOneOf,
         "table.txt:4: \"edition\" (column key) is none of the words that may stand here."},
        {"other_names.txt", "garden", "g\xFFrden", ErrorCode::TextNotClean,
         "other_names.txt:2: the line is not UTF-8 text."},
    };
    return kInputs;
}

}  // namespace

TEST_CASE("wrong input is refused with a sentence that names file and line", "[build]") {
    for (const BadInput& bad : badInputs()) {
        INFO(bad.file << ": " << bad.from << " -> " << bad.to);
        const Scratch scratch;
        writeSmallTable(scratch);
        const std::string good = scratch.read(bad.file);
        REQUIRE(good.find(bad.from) != std::string::npos);
        scratch.write(bad.file, replaced(good, bad.from, bad.to));
        const auto built = buildTable(scratch.path(""), scratch.path("small.table"));
        REQUIRE_FALSE(built);
        CHECK(built.error().code == bad.code);
        CHECK(buildSentence(built.error()) == bad.sentence);
        CHECK_FALSE(scratch.has("small.table"));
    }
}

TEST_CASE("a folder without the text tables, or without foods, is refused", "[build]") {
    const Scratch scratch;
    const auto absent = buildTable(scratch.path("nowhere"), scratch.path("small.table"));
    REQUIRE_FALSE(absent);
    CHECK(buildSentence(absent.error()) == "table.txt: cannot be read.");
    writeSmallTable(scratch);
    for (const char* file : {"foods.txt", "components.txt", "spreads.txt", "measures.txt",
                             "other_names.txt", "kitchen_names.txt", "everyday.txt"}) {
        const std::string text = scratch.read(file);
        scratch.write(file, text.substr(0, text.find('\n') + 1));
    }
    const auto empty = buildTable(scratch.path(""), scratch.path("small.table"));
    REQUIRE_FALSE(empty);
    CHECK(buildSentence(empty.error()) == "foods.txt: there are no foods.");
}

TEST_CASE("a kitchen or another database is not built over, an older table is", "[build]") {
    const Scratch scratch;
    writeSmallTable(scratch);
    REQUIRE(Kitchen::create(scratch.path("home.nettare"), "2026-05-16T12:00:00+02:00"));
    const std::string kitchen = scratch.read("home.nettare");
    const auto refused = buildTable(scratch.path(""), scratch.path("home.nettare"));
    REQUIRE_FALSE(refused);
    CHECK(buildSentence(refused.error()) ==
          scratch.path("home.nettare") +
              ": cannot be written, it is a kitchen or other database; choose another name.");
    CHECK(scratch.read("home.nettare") == kitchen);
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    const std::string table = scratch.read("small.table");
    SQLite::Database{scratch.path("small.table"), SQLite::OPEN_READWRITE}.exec(
        "PRAGMA user_version = 1");
    REQUIRE(buildTable(scratch.path(""), scratch.path("small.table")));
    CHECK(scratch.read("small.table") == table);
}
