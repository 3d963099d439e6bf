#include <catch2/catch.hpp>

#include "app/words/error_sentence.h"

namespace nettare {

namespace {

/// An error at a row of a CSV.
Error atRow(ErrorCode code) {
    Error error{code};
    error.file = "foods.csv";
    error.line = 12;
    return error;
}

Error atCell(ErrorCode code, std::string_view found) {
    return atRow(code).with("found", found).with("column", "Iron (mg)");
}

}  // namespace

TEST_CASE("a table in columns that cannot be read as one says what to do", "[words]") {
    CHECK(errorSentence(atRow(ErrorCode::CsvNoHeader)) ==
          "foods.csv, line 12: this table is empty; give one with a row of headers and a row for "
          "each food.");
    CHECK(errorSentence(atRow(ErrorCode::CsvQuoteOpen)) ==
          "foods.csv, line 12: a quote opens in this row and is never closed; close it, or save "
          "the table again.");
    CHECK(errorSentence(atRow(ErrorCode::CsvLineTooLong).with("most", "4")) ==
          "foods.csv, line 12: this row is longer than 4 MiB, as no row of a table is; check that "
          "it is the right file.");
    CHECK(errorSentence(Error{ErrorCode::CsvOneFile}) ==
          "one CSV is imported at a time, and here is none or are several; give the path of the "
          "file.");
    CHECK(errorSentence(atRow(ErrorCode::FdcNoDate)) ==
          "foods.csv, line 12: no food here has a publication date like 2019-04-01, so the release "
          "is not known; take the whole download again.");
}

TEST_CASE("a mapping that does not fit its table names column and unit", "[words]") {
    CHECK(errorSentence(Error{ErrorCode::CsvMappingNeeded}) ==
          "nothing says what the columns hold; give a mapping of columns.");
    CHECK(errorSentence(Error{ErrorCode::NotAMapping}.with("found", "nettare recipe")) ==
          "the format “nettare recipe” is no mapping of columns; it must say “nettare columns”.");
    CHECK(errorSentence(atRow(ErrorCode::CsvColumnMissing)
                            .with("column", "Fibre (g)")
                            .with("known", "Code, Name")) ==
          "foods.csv, line 12: no column is headed “Fibre (g)”; write one of: Code, Name.");
    CHECK(errorSentence(atRow(ErrorCode::CsvColumnTwice).with("column", "Fat")) ==
          "foods.csv, line 12: two columns are headed “Fat”; rename one of them.");
    CHECK(errorSentence(
              atRow(ErrorCode::CsvUnitMissing).with("column", "Iron").with("component", "iron")) ==
          "foods.csv, line 12: the column “Iron” states no unit of iron; write its unit, or leave "
          "the column out.");
    CHECK(errorSentence(atRow(ErrorCode::CsvUnitNotFitting)
                            .with("found", "IU")
                            .with("column", "Vitamin D (IU)")
                            .with("wanted", "µg")
                            .with("component", "vitamin D")) ==
          "foods.csv, line 12: “IU” of the column “Vitamin D (IU)” cannot be turned into µg of "
          "vitamin D; correct the unit, or leave the column out.");
}

TEST_CASE("a row that is left out says why", "[words]") {
    CHECK(errorSentence(atRow(ErrorCode::CsvNotUtf8)) ==
          "foods.csv, line 12: this row is not UTF-8 text and is left out; save the file as "
          "UTF-8.");
    CHECK(errorSentence(atRow(ErrorCode::CsvTextAfterQuote)) ==
          "foods.csv, line 12: text follows a closing quote, so this row is left out; double the "
          "quotes inside a field.");
    CHECK(errorSentence(atRow(ErrorCode::FoodNumberMissing).with("column", "Code")) ==
          "foods.csv, line 12: the column “Code” is empty, so this food is left out; give it a "
          "number.");
    CHECK(errorSentence(atRow(ErrorCode::FoodNumberTwice).with("found", "A7")) ==
          "foods.csv, line 12: the number “A7” stands in an earlier row, so this food is left "
          "out; give it another.");
    CHECK(errorSentence(atRow(ErrorCode::FoodNameMissing).with("column", "Name")) ==
          "foods.csv, line 12: the column “Name” is empty, so this food is left out; give it a "
          "name.");
    CHECK(errorSentence(atRow(ErrorCode::FoodTextNotClean)
                            .with("found", "leek\x1b")
                            .with("column", "Name")
                            .with("most", "400")) ==
          "foods.csv, line 12: “leek ” in the column “Name” holds invisible control characters or "
          "is longer than 400 letters, so this food is left out; correct it.");
}

TEST_CASE("a cell that is left out says why, and that its food stays", "[words]") {
    CHECK(errorSentence(atCell(ErrorCode::CellNotANumber, "tr")) ==
          "foods.csv, line 12: “tr” in the column “Iron (mg)” is no number, so this value is left "
          "out and the food stays; write a number, or nothing.");
    CHECK(errorSentence(atCell(ErrorCode::CellNegative, "-1")) ==
          "foods.csv, line 12: “-1” in the column “Iron (mg)” is less than zero, so this value is "
          "left out and the food stays; correct it.");
    CHECK(errorSentence(
              atCell(ErrorCode::CellTooLarge, "2000").with("most", "101").with("unit", "g")) ==
          "foods.csv, line 12: “2000” in the column “Iron (mg)” is more than 101 g, so this value "
          "is left out and the food stays; check it and the unit of the column.");
    CHECK(errorSentence(atRow(ErrorCode::MeasureWeighsNothing).with("found", "cup")) ==
          "foods.csv, line 12: the measure “cup” has no weight above zero, so it is left out and "
          "the food stays; correct it.");
}

}  // namespace nettare
