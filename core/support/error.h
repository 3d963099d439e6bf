#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace nettare {

/// What went wrong, without prose. app/words/error_sentence.cpp turns each code into one sentence.
enum class ErrorCode {
    // files
    FileNotReadable,
    FileTooLarge,
    FileNotWritable,
    // JSON text
    JsonSyntax,
    JsonEmpty,
    JsonEndsEarly,
    JsonNotUtf8,
    JsonDuplicateKey,
    JsonTooDeep,
    JsonNumberTooLarge,
    // shape of a document
    WrongKind,
    MissingKey,
    UnknownKey,
    EmptyKey,
    EmptyText,
    TextTooLong,
    TextNotClean,
    TooManyItems,
    TooFewItems,
    NotOneOf,
    NotADecimal,
    NotAnAmount,
    NotAnIdentifier,
    NotATime,
    OneOfNeeded,
    WrongFormat,
    NewerFormat,
    // quantities
    AmountAmbiguous,
    AmountNotPositive,
    AmountTooLong,
    RangeReversed,
    RangeNotAllowed,
    UnknownUnit,
    UnitNotOfKind,
    NegativeMass,
    NotPositive,
    OutOfRange,
    // references inside a document
    DuplicateId,
    UnknownReference,
    FoodNotFound,
    ComponentUnknown,
    // weighing
    NetNegative,
    ReadingUnitsDiffer,
    SeriesEmpty,
    SeriesKindDiffers,
    NothingWeighed,
    // ways to grams
    NoWayToGrams,
    NoYield,
    WayNotOpen,
    PiecesNotAmong,
    // residues and cooked weight
    ResidueTooLarge,
    LineWeighsNothing,
    NotEatenTooLarge,
    CookedWeightMissing,
    // labels
    LabelAmountImpossible,
    LabelAmountUnreadable,
    // figures and panels
    RecipeCycle,
    NestingTooDeep,
    TooManyLines,
    NotForKeptRecipe,
    PanelLineOpen,
    PanelNeedsCookedWeight,
    NothingPrintsSo,
    // table files
    TableUnreadable,
    NotATable,
};

/// A named value of an error: what the sentence quotes.
struct ErrorValue {
    std::string name;
    std::string text;
};

/// An error: its code, its place and the values its sentence names. Carries no prose.
struct Error {
    ErrorCode code{};
    std::string file{};     ///< path as the caller gave it; may be empty
    std::string pointer{};  ///< RFC 6901 JSON pointer inside the file; may be empty
    int line = 0;           ///< 1-based line in the file; 0 where no line is meant
    int column = 0;         ///< 1-based column; 0 where no column is meant
    std::vector<ErrorValue> values{};

    /// The same error with one more named value; long text is cut to 60 characters.
    [[nodiscard]] Error with(std::string_view name, std::string_view text) const;
    /// The same error at a JSON pointer.
    [[nodiscard]] Error at(std::string_view place) const;
    /// The value of that name, or empty.
    [[nodiscard]] std::string_view value(std::string_view name) const;
};

}  // namespace nettare
