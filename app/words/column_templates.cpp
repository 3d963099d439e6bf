#include "app/words/column_templates.h"

namespace nettare {

namespace {

using enum ErrorCode;

std::string_view ofTheColumns(ErrorCode code) {
    switch (code) {
        case FdcNoDate:
            return "no food here has a publication date like 2019-04-01, so the release is not "
                   "known; take the whole download again.";
        case CsvMappingNeeded:
            return "nothing says what the columns hold; give a mapping of columns.";
        case CsvOneFile:
            return "one CSV is imported at a time, and here is none or are several; give the path "
                   "of the file.";
        case NotAMapping:
            return "the format “{found}” is no mapping of columns; it must say “nettare columns”.";
        case CsvNoHeader:
            return "this table is empty; give one with a row of headers and a row for each food.";
        case CsvQuoteOpen:
            return "a quote opens in this row and is never closed; close it, or save the table "
                   "again.";
        case CsvLineTooLong:
            return "this row is longer than {most} MiB, as no row of a table is; check that it is "
                   "the right file.";
        case CsvColumnMissing:
            return "no column is headed “{column}”; write one of: {known}.";
        case CsvColumnTwice:
            return "two columns are headed “{column}”; rename one of them.";
        case CsvUnitMissing:
            return "the column “{column}” states no unit of {component}; write its unit, or leave "
                   "the column out.";
        case CsvUnitNotFitting:
            return "“{found}” of the column “{column}” cannot be turned into {wanted} of "
                   "{component}; correct the unit, or leave the column out.";
        default:
            return {};
    }
}

std::string_view ofTheRow(ErrorCode code) {
    switch (code) {
        case CsvNotUtf8:
            return "this row is not UTF-8 text and is left out; save the file as UTF-8.";
        case CsvTextAfterQuote:
            return "text follows a closing quote, so this row is left out; double the quotes "
                   "inside a field.";
        case FoodNumberMissing:
            return "the column “{column}” is empty, so this food is left out; give it a number.";
        case FoodNumberTwice:
            return "the number “{found}” stands in an earlier row, so this food is left out; give "
                   "it another.";
        case FoodNameMissing:
            return "the column “{column}” is empty, so this food is left out; give it a name.";
        case FoodTextNotClean:
            return "“{found}” in the column “{column}” holds invisible control characters or is "
                   "longer than {most} letters, so this food is left out; correct it.";
        default:
            return {};
    }
}

std::string_view ofTheCell(ErrorCode code) {
    switch (code) {
        case CellNotANumber:
            return "“{found}” in the column “{column}” is no number, so this value is left out "
                   "and the food stays; write a number, or nothing.";
        case CellNegative:
            return "“{found}” in the column “{column}” is less than zero, so this value is left "
                   "out and the food stays; correct it.";
        case CellTooLarge:
            return "“{found}” in the column “{column}” is more than {most} {unit}, so this value "
                   "is left out and the food stays; check it and the unit of the column.";
        case MeasureWeighsNothing:
            return "the measure “{found}” has no weight above zero, so it is left out and the food "
                   "stays; correct it.";
        default:
            return {};
    }
}

}  // namespace

std::string_view columnTemplateFor(ErrorCode code) {
    for (const auto group : {ofTheColumns, ofTheRow, ofTheCell})
        if (const std::string_view text = group(code); !text.empty()) return text;
    return {};
}

}  // namespace nettare
