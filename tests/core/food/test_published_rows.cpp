#include <catch2/catch.hpp>

#include "core/food/published_rows.h"

namespace nettare {

namespace {

/// "line: expected / found" of a text that is refused.
std::string faultOfText(std::string_view text) {
    const auto rows = publishedRows(text, "code|percent");
    if (rows) return "none";
    const Error& error = rows.error();
    CHECK(error.code == ErrorCode::WrongFormat);
    return std::to_string(error.line) + ": " + std::string{error.value("expected")} + " / " +
           std::string{error.value("found")};
}

}  // namespace

TEST_CASE("rows of a published table keep their fields as written", "[published]") {
    const auto rows =
        publishedRows("# a source\ncode|percent\n0001|100\n\n# more\n0003|-\n", "code|percent");
    REQUIRE(rows);
    REQUIRE(rows->size() == 2);
    CHECK(rows->at(0).line == 3);
    CHECK(rows->at(0).fields == std::vector<std::string_view>{"0001", "100"});
    CHECK(rows->at(1).line == 6);
    CHECK(rows->at(1).fields == std::vector<std::string_view>{"0003", "-"});
    CHECK(publishedRows("code|percent", "code|percent")->empty());
}

TEST_CASE("a published table with other columns or fields is refused by its line", "[published]") {
    CHECK(faultOfText("") == "1: code|percent / ");
    CHECK(faultOfText("# only a source\n") == "2: code|percent / ");
    CHECK(faultOfText("# a source\ncode|grams\n") == "2: code|percent / code|grams");
    CHECK(faultOfText("code|percent\n0001|100\n0003\n") == "3: 2 fields / 1 fields");
    CHECK(faultOfText("code|percent\n0001|100|\n") == "2: 2 fields / 3 fields");
}

TEST_CASE("fields of a row are read in their order, and a gap is not zero", "[published]") {
    const PublishedRow row{.line = 7,
                           .fields = {"Braised", "0500", "-", "12", "-", "-22.38", "-", "0"}};
    PublishedFields fields{row};
    CHECK(fields.text() == "Braised");
    CHECK(fields.digits(4) == "0500");
    CHECK(fields.digitsOrGap(5) == std::nullopt);
    CHECK(fields.whole(1, 12) == 12);
    CHECK(fields.wholeOrGap(0, 100) == std::nullopt);
    CHECK(fields.number(-100, 100) == -22.38);
    CHECK(fields.numberOrGap(-100, 100) == std::nullopt);
    CHECK(fields.numberOrGap(-100, 100) == 0.0);
    CHECK_FALSE(fields.fault());
}

TEST_CASE("a field that is not what it must be breaks its row", "[published]") {
    const auto found = [](std::string_view field, const auto& read) {
        const PublishedRow row{.line = 7, .fields = {field}};
        PublishedFields fields{row};
        read(fields);
        if (!fields.fault()) return std::string{"well"};
        CHECK(fields.fault()->line == 7);
        CHECK(fields.fault()->value("found") == field);
        return std::string{fields.fault()->value("expected")};
    };
    const auto text = [](PublishedFields& fields) { return fields.text(); };
    const auto code = [](PublishedFields& fields) { return fields.digits(4); };
    const auto percent = [](PublishedFields& fields) { return fields.wholeOrGap(0, 100); };
    const auto change = [](PublishedFields& fields) { return fields.numberOrGap(-100, 100); };
    const auto yield = [](PublishedFields& fields) { return fields.number(1, 200); };
    for (const char* field : {"", "-"}) CHECK(found(field, text) == "a text");
    for (const char* field : {"", "-", "12", "00120", "12a4", " 123"})
        CHECK(found(field, code) == "4 digits");
    for (const char* field :
         {"", "--", "101", "-1", "1e2", "99.5", " 5", "5 ", "+5", "0x10", "99999999999999999999"})
        CHECK(found(field, percent) == "a whole number from 0 to 100");
    for (const char* field : {"", "101", "-100.5", "1e1", "1,5", "nan", "inf", "1.2.3", " 1"})
        CHECK(found(field, change) == "a number from -100 to 100");
    for (const char* field : {"-", "0", "0.99", "200.01"})
        CHECK(found(field, yield) == "a number from 1 to 200");
    CHECK(found("100", percent) == "well");
    CHECK(found("-100", change) == "well");
}

TEST_CASE("of a broken row the first fault is told, and reading on does no harm", "[published]") {
    const PublishedRow row{.line = 2, .fields = {"x", "y"}};
    PublishedFields fields{row};
    CHECK(fields.whole(3, 9) == 3);
    CHECK(fields.number(4, 9) == 4);
    CHECK(fields.text().empty());
    CHECK(fields.digitsOrGap(5) == "");
    fields.refuse("something else");
    REQUIRE(fields.fault());
    CHECK(fields.fault()->value("expected") == "a whole number from 3 to 9");
    CHECK(fields.fault()->value("found") == "x");
}

}  // namespace nettare
