#include <catch2/catch.hpp>

#include "db/food_table.h"
#include "small_sr28.h"

using namespace nettare;

namespace {

constexpr auto kRest = "^~~^~~^^^^^^^~~^05/2016^";

/// The one row that an import rejects when this row is added to this file.
Error rejection(const std::string& file, const std::string& row) {
    SmallSr28 small;
    small.addRow(file, row);
    const auto report = importTable(small.request());
    REQUIRE(report);
    CHECK(report->written);
    CHECK(report->rejected == 1);
    REQUIRE(report->rejectedRows.size() == 1);
    return report->rejectedRows[0].reason;
}

Error failure(const SmallSr28& small) {
    const auto report = importTable(small.request());
    REQUIRE_FALSE(report);
    CHECK(small.listed().empty());
    return report.error();
}

}  // namespace

TEST_CASE("a row that cannot be read is left out, with file, line and reason", "[import]") {
    const Error fields = rejection("NUT_DATA.txt", "~90001~^~204~^1.0");
    CHECK(fields.code == ErrorCode::FieldsDiffer);
    CHECK(fields.file == "NUT_DATA.txt");
    CHECK(fields.line == 9);
    CHECK(fields.value("found") == "3");
    CHECK(fields.value("known") == "18");
    const Error number =
        rejection("NUT_DATA.txt", std::string{"~90002~^~203~^1,5^0^^~4~^~~"} + kRest);
    CHECK(number.code == ErrorCode::NotPublished);
    CHECK(number.value("found") == "1,5");
    CHECK(number.value("wanted") == "a number from 0 on");
    CHECK(rejection("NUT_DATA.txt", std::string{"~90002~^~203~^-1^0^^~4~^~~"} + kRest).code ==
          ErrorCode::NotPublished);
    CHECK(rejection("NUT_DATA.txt", std::string{"~90002~^~203~^1e5^0^^~4~^~~"} + kRest).code ==
          ErrorCode::NotPublished);
    CHECK(rejection("NUT_DATA.txt", std::string{"~90002~^~203~^^0^^~4~^~~"} + kRest).code ==
          ErrorCode::NotPublished);
    CHECK(rejection("NUT_DATA.txt", std::string{"~90002~^~203~^1^x^^~4~^~~"} + kRest).code ==
          ErrorCode::NotPublished);
    CHECK(rejection("NUT_DATA.txt", std::string{"~90002~^~203~^1^0^^~99~^~~"} + kRest)
              .value("wanted") == "a code of SRC_CD");
    CHECK(rejection("WEIGHT.txt", "~90001~^4^1^~cup~^0^^").value("wanted") == "a number above 0");
    CHECK(rejection("WEIGHT.txt", "~90001~^4^0^~cup~^5^^").value("wanted") == "a number above 0");
    CHECK(rejection("WEIGHT.txt", "~90001~^4^1^~cup").code == ErrorCode::FieldsDiffer);
    CHECK(rejection("WEIGHT.txt", "~90001~^4^1^~c\x81p~^5^^").value("wanted") == "plain text");
    CHECK(rejection("FOOD_DES.txt",
                    "~90007~^~7777~^~Sun kale~^~~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57")
              .value("wanted") == "a group of FD_GROUP");
}

TEST_CASE("what is told twice counts once, and a row of no food is left out", "[import]") {
    const Error value =
        rejection("NUT_DATA.txt", std::string{"~90001~^~203~^9.9^0^^~4~^~~"} + kRest);
    CHECK(value.code == ErrorCode::RowRepeated);
    CHECK(value.value("found") == "90001 203");
    CHECK(rejection("FOOD_DES.txt",
                    "~90001~^~1100~^~Sun kale~^~~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57")
              .code == ErrorCode::RowRepeated);
    const Error food =
        rejection("NUT_DATA.txt", std::string{"~90099~^~203~^9.9^0^^~4~^~~"} + kRest);
    CHECK(food.code == ErrorCode::RowWithoutFood);
    CHECK(food.value("found") == "90099");
    CHECK(rejection("WEIGHT.txt", "~90099~^1^1^~cup~^5^^").code == ErrorCode::RowWithoutFood);
}

TEST_CASE("a nutrient number that the publisher does not define is reported, not stored",
          "[import]") {
    SmallSr28 small;
    small.addRow("NUT_DATA.txt", std::string{"~90001~^~999~^1^0^^~4~^~~"} + kRest);
    const auto report = importTable(small.request());
    REQUIRE(report);
    CHECK(report->values == 8);
    CHECK(report->rejected == 0);
    CHECK(report->unknownComponents == std::map<std::string, std::size_t>{{"999", 1}});
}

TEST_CASE("a unit that cannot become ours stops the import", "[import]") {
    SmallSr28 small;
    small.addRow("NUTR_DEF.txt", "~401~^~IU~^~VITC~^~Vitamin C~^~1~^~6300~");
    const Error error = failure(small);
    CHECK(error.code == ErrorCode::UnitUnconvertible);
    CHECK(error.file == "NUTR_DEF.txt");
    CHECK(error.line == 7);
    CHECK(error.value("unit") == "IU");
    CHECK(error.value("wanted") == "mg");
}

TEST_CASE("milligrams become the grams of ours", "[import]") {
    SmallSr28 small;
    small.file("NUTR_DEF.txt", "~203~^~mg~^~PROCNT~^~Protein~^~2~^~600~\r\n");
    small.file("NUT_DATA.txt", std::string{"~90001~^~203~^1250^9^40^~1~^~A~"} + kRest + "\r\n");
    REQUIRE(importTable(small.request()));
    const auto table = FoodTable::open(small.table());
    const auto food = table->find("90001");
    CHECK((*food)->profile[Component::PROCNT] == 1.25);
    CHECK((*food)->profile.spread[indexOf(Component::PROCNT)].standardError == 0.04);
}

TEST_CASE("a missing file, an empty one and a foreign one are each told once", "[import]") {
    SmallSr28 small;
    small.remove("WEIGHT.txt");
    CHECK(failure(small).code == ErrorCode::ImportFileMissing);
    CHECK(failure(small).value("found") == "WEIGHT.txt");
    small.file("WEIGHT.txt", "");
    CHECK(failure(small).code == ErrorCode::NotPublished);
    small.file("WEIGHT.txt", "id,name\n1,salt\n");
    const Error foreign = failure(small);
    CHECK(foreign.code == ErrorCode::NotPublished);
    CHECK(foreign.file == "WEIGHT.txt");
    CHECK(foreign.line == 1);
    CHECK(foreign.value("found") == "id,name");
    CHECK(foreign.value("wanted") == "7 fields between carets");
    small.file("WEIGHT.txt", std::string(3'000'000, 'x'));
    CHECK(failure(small).code == ErrorCode::NotPublished);
}

TEST_CASE("what is no zip, or nothing at all, is told", "[import]") {
    const SmallSr28 small;
    auto request = small.request();
    request.path = small.folder() + "/none.zip";
    CHECK(importTable(request).error().code == ErrorCode::FileNotReadable);
    request.path = "/dev/null";
    CHECK(importTable(request).error().code == ErrorCode::FileNotReadable);
    Scratch scratch;
    scratch.write("no.zip", "this is a letter");
    request.path = scratch.path("no.zip");
    CHECK(importTable(request).error().code == ErrorCode::ZipDamaged);
    request.path = small.folder() + "/WEIGHT.txt";
    CHECK(importTable(request).error().code == ErrorCode::ImportFileMissing);
    CHECK(small.listed().empty());
}
