#include <catch2/catch.hpp>

#include "db/build_table/row_reader.h"

using namespace nettare;

namespace {

/// A row of one field.
struct OneField {
    TextTable table;
    TextRow row;

    explicit OneField(const char* field)
        : table{.file = "foods.txt", .columns = {"grams"}, .rows = {}},
          row{.line = 7, .fields = {field}} {}
};

}  // namespace

TEST_CASE("a dash is missing, which is never zero", "[text]") {
    const OneField dash{"-"};
    CHECK_FALSE(RowReader(dash.table, dash.row).number());
    CHECK(RowReader(dash.table, dash.row).text().empty());
    CHECK(RowReader(dash.table, dash.row).count() == 0);
    RowReader required{dash.table, dash.row};
    static_cast<void>(required.requiredText());
    REQUIRE_FALSE(required.good());
    CHECK(required.error().code == ErrorCode::EmptyText);
}

TEST_CASE("a zero that is printed is a value", "[text]") {
    const OneField zero{"0.00"};
    RowReader row{zero.table, zero.row};
    CHECK(row.number() == 0.0);
    CHECK(row.good());
}

TEST_CASE("numbers are read as the nearest double of the decimal", "[text]") {
    const OneField salt{"38758"};
    CHECK(RowReader(salt.table, salt.row).number() == 38758.0);
    const OneField butter{"14.2"};
    CHECK(RowReader(butter.table, butter.row).positiveNumber() == 14.2);
    const OneField points{"1300"};
    CHECK(RowReader(points.table, points.row).count() == 1300);
}

TEST_CASE("what is no number, negative, zero or out of range is refused with its place", "[text]") {
    const auto numberError = [](const char* field) {
        const OneField one{field};
        RowReader row{one.table, one.row};
        static_cast<void>(row.number());
        REQUIRE_FALSE(row.good());
        return row.error();
    };
    CHECK(numberError("1,5").code == ErrorCode::NotADecimal);
    CHECK(numberError("tr").code == ErrorCode::NotADecimal);
    CHECK(numberError("-1").code == ErrorCode::OutOfRange);
    CHECK(numberError("").code == ErrorCode::EmptyText);
    const Error error = numberError("1,5");
    CHECK(error.file == "foods.txt");
    CHECK(error.line == 7);
    CHECK(error.value("column") == "grams");
    CHECK(error.value("found") == "1,5");
}

TEST_CASE("grams must be above zero and counts whole", "[text]") {
    const OneField zero{"0"};
    RowReader grams{zero.table, zero.row};
    static_cast<void>(grams.positiveNumber());
    REQUIRE_FALSE(grams.good());
    CHECK(grams.error().code == ErrorCode::NotPositive);
    RowReader count{zero.table, zero.row};
    static_cast<void>(count.count());
    REQUIRE_FALSE(count.good());
    CHECK(count.error().code == ErrorCode::OutOfRange);
    const OneField half{"2.5"};
    RowReader whole{half.table, half.row};
    static_cast<void>(whole.count());
    REQUIRE_FALSE(whole.good());
    CHECK(whole.error().code == ErrorCode::NotADecimal);
}
