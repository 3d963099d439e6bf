#include "db/build_table/build_sentence.h"

#include <fmt/core.h>

namespace nettare {

namespace {

std::string placeOf(const Error& error) {
    if (error.file.empty()) return {};
    return error.line > 0 ? fmt::format("{}:{}: ", error.file, error.line) : error.file + ": ";
}

/// What is wrong with the field found there; empty for errors of another kind.
std::string_view troubleWithField(ErrorCode code) {
    switch (code) {
        case ErrorCode::EmptyText:
            return "must not be missing";
        case ErrorCode::NotADecimal:
            return "must be a decimal number, or - where it is missing";
        case ErrorCode::NotPositive:
            return "must be above zero";
        case ErrorCode::OutOfRange:
            return "is out of range";
        case ErrorCode::UnknownReference:
            return "has no value of this food in components.txt";
        case ErrorCode::DuplicateId:
            return "is there twice";
        case ErrorCode::FoodNotFound:
            return "is the number of no food in foods.txt";
        case ErrorCode::ComponentUnknown:
            return "is no tagname that we know";
        case ErrorCode::NotOneOf:
            return "is none of the words that may stand here";
        case ErrorCode::NotAnIdentifier:
            return "must be 64 hexadecimal digits in lower case";
        default:
            return {};
    }
}

std::string troubleWithFile(const Error& error) {
    switch (error.code) {
        case ErrorCode::FileNotReadable:
            return "cannot be read";
        case ErrorCode::FileNotWritable:
            return fmt::format("cannot be written, {}", error.value("reason"));
        case ErrorCode::TextNotClean:
            return "the line is not UTF-8 text";
        case ErrorCode::MissingKey:
            return fmt::format("there is no line for \"{}\"", error.value("key"));
        case ErrorCode::TooFewItems:
            return "there are no foods";
        default:
            return fmt::format("expected {} fields or columns, found {}", error.value("expected"),
                               error.value("found"));
    }
}

}  // namespace

std::string buildSentence(const Error& error) {
    const std::string_view field = troubleWithField(error.code);
    if (field.empty()) return placeOf(error) + troubleWithFile(error) + ".";
    return fmt::format("{}\"{}\" (column {}) {}.", placeOf(error), error.value("found"),
                       error.value("column"), field);
}

}  // namespace nettare
