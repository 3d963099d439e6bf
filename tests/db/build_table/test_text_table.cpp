#include <catch2/catch.hpp>

#include "db/build_table/text_table.h"
#include "scratch.h"

using namespace nettare;

namespace {

Result<TextTable> readText(std::string_view content) {
    const Scratch scratch;
    scratch.write("names.txt", content);
    return readTextTable(scratch.path(""), "names.txt", "number|name");
}

}  // namespace

TEST_CASE("a text table is lines of fields below a line of column names", "[text]") {
    const auto table = readText("# comment\n\nnumber|name\n01|onion, raw\n# more\n02|-\n");
    REQUIRE(table);
    CHECK(table->file == "names.txt");
    CHECK(table->columns == std::vector<std::string>{"number", "name"});
    REQUIRE(table->rows.size() == 2);
    CHECK(table->rows[0].line == 4);
    CHECK(table->rows[0].fields == std::vector<std::string>{"01", "onion, raw"});
    CHECK(table->rows[1].line == 6);
}

TEST_CASE("other columns than expected are refused", "[text]") {
    const auto table = readText("name|number\n");
    REQUIRE_FALSE(table);
    CHECK(table.error().code == ErrorCode::WrongFormat);
    CHECK(table.error().line == 1);
    CHECK(table.error().value("expected") == "number|name");
    CHECK(table.error().value("found") == "name|number");
    CHECK(readText("# only a comment\n").error().code == ErrorCode::WrongFormat);
    CHECK(readText("").error().code == ErrorCode::WrongFormat);
}

TEST_CASE("a line with a field too many or too few names its place", "[text]") {
    for (const char* line : {"01", "01|a|b", "01|"}) {
        const auto table = readText("number|name\n02|good\n" + std::string{line} + "\n");
        if (std::string{line} == "01|") {
            CHECK(table);
            continue;
        }
        REQUIRE_FALSE(table);
        CHECK(table.error().code == ErrorCode::WrongFormat);
        CHECK(table.error().line == 3);
        CHECK(table.error().file == "names.txt");
    }
}

TEST_CASE("bytes that are no text are refused with their line", "[text]") {
    const auto table = readText("number|name\n01|cr\xE8me\n");
    REQUIRE_FALSE(table);
    CHECK(table.error().code == ErrorCode::TextNotClean);
    CHECK(table.error().line == 2);
}

TEST_CASE("a file that is not there is not readable", "[text]") {
    const Scratch scratch;
    const auto table = readTextTable(scratch.path(""), "names.txt", "number|name");
    REQUIRE_FALSE(table);
    CHECK(table.error().code == ErrorCode::FileNotReadable);
    CHECK(table.error().file == "names.txt");
}
