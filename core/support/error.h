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
    JsonEmpty,      ///< nothing but white space
    JsonEndsEarly,  ///< a quote or bracket is still open
    JsonNotUtf8,
    JsonDuplicateKey,    ///< value "key"
    JsonTooDeep,         ///< value "most"
    JsonNumberTooLarge,  ///< beyond what a double holds
    // shape of a document
    WrongKind,  ///< "found" a number where text is "wanted"
    MissingKey,
    UnknownKey,
    EmptyKey,
    EmptyText,
    TextTooLong,
    TextNotClean,  ///< isPlainLine() refuses it
    TooManyItems,
    TooFewItems,
    NotOneOf,  ///< "known" lists the words that are
    NotADecimal,
    NotAnAmount,
    NotAnIdentifier,
    NotAUuid,     ///< no UUID in lower case
    NotAHash,     ///< no SHA-256 as 64 lower-case hexadecimal digits
    NotATime,     ///< no ISO 8601 time with its offset
    NotADate,     ///< no day like 2026-05-16
    OneOfNeeded,  ///< none or several of keys that exclude each other
    WrongFormat,  ///< another kind of file
    NewerFormat,  ///< this kind of file, in a version that is not known
    // quantities
    AmountAmbiguous,  ///< "1,500": values "decimal" and "grouped"
    AmountNotPositive,
    AmountTooLong,
    RangeReversed,
    RangeNotAllowed,  ///< "2-3" where one number is meant
    UnknownUnit,
    UnitNotOfKind,    ///< a volume unit on a scale
    UnitAsked,        ///< "oz": a weight or a volume, "known" lists both
    UnitNotInSystem,  ///< a pint, where the recipe's measures have none
    NegativeMass,     ///< a decimal below zero where none can be
    NotPositive,
    OutOfRange,
    // references inside a document
    DuplicateId,
    UnknownReference,
    FoodNotFound,  ///< no table at hand has the row
    ComponentUnknown,
    NotAKeptRecipe,  ///< no revision of this kitchen, or not written like one
    // weighing
    NetNegative,         ///< tare above gross
    ReadingUnitsDiffer,  ///< gross and tare from scales of different units
    SeriesEmpty,
    NoSeriesOfPieces,   ///< finished pieces by a ratio or by measures
    SeriesKindDiffers,  ///< grams a piece where a ratio is wanted, or the like
    NothingWeighed,     ///< a net of zero where something must lie
    // ways to grams
    NoWayToGrams,    ///< no source says what one unit of the food weighs
    NoYield,         ///< as purchased, and no refuse or trim series is known
    WayNotOpen,      ///< the way that the line asks for
    PiecesNotAmong,  ///< fewer pieces than the series that is among them
    // residues and cooked weight
    ResidueTooLarge,    ///< more left over than went in
    ShareNotOfMixture,  ///< a share above one, or of a line that is not in the mixture
    DripTooLarge,       ///< more of "component" ran off than the lines hold
    NothingCounted,     ///< every line is left out by the recipe's own rules
    LineWeighsNothing,
    NotEatenTooLarge,     ///< bones and sticks as heavy as the dish
    CookedWeightMissing,  ///< a portion in grams of a dish that was not weighed
    // labels
    LabelAmountImpossible,  ///< no lawful rounding prints it
    LabelAmountUnreadable,
    LabelNeedsServing,       ///< amounts per serving, or a household measure, and no serving size
    LabelNeedsDensity,       ///< millilitres, and nothing says what one weighs
    AddedSugarsAboveSugars,  ///< "found" g are stated of "food", which has at most "most"
    LabelFoodUnknown,        ///< no labelled food of the kitchen is called "found"
    LabelFoodAmbiguous,      ///< several begin so: "known"
    NotALabel,               ///< own food "food" was typed from another source
    PhotoTooLarge,           ///< more than "most" MiB
    PhotoNotAnImage,         ///< neither JPEG nor PNG
    PhotoMissing,            ///< the kitchen has none of that hash
    PhotoChanged,            ///< it is no longer what its hash says
    // figures and panels
    RecipeCycle,
    NestingTooDeep,
    TooManyLines,
    NotForKeptRecipe,  ///< a key that speaks of foods only
    PanelLineOpen,     ///< the two ends of an amount print differently
    PanelNeedsCookedWeight,
    TargetOutOfReach,  ///< no amount of the line brings the figure between "least" and "most" there
    NothingPrintsSo,   ///< no unrounded value gives all printed ones
    // documents for a kitchen
    AlreadyKept,  ///< "title" is there as "revision" of "recipe"
    // drafts
    LastLine,        ///< a recipe has at least one
    EditDoesNotFit,  ///< a place, an index or what should stand there is another in this draft
    // kitchens
    KitchenMissing,
    KitchenIsFolder,
    KitchenEmpty,  ///< a file of no bytes
    NotAKitchen,   ///< some other file
    KitchenNewer,  ///< format "found", where "known" is the newest that is
    KitchenOlder,  ///< the same, where it cannot be brought up to date
    KitchenDamaged,
    KitchenUnreadable,   ///< no right to read it
    KitchenUnfinished,   ///< changes wait beside it that cannot be taken in there
    KitchenNotWritable,  ///< no right to write it, or no folder
    KitchenExists,
    KitchenNameTaken,   ///< the name of a file that stands beside a kitchen, ending in "found"
    KitchenNeighbour,   ///< "found" beside it is of something else
    KitchenHeld,        ///< another window, "holder", writes it
    KitchenOpenToRead,  ///< a change to one that was opened with KitchenAccess::Read
    KitchenBusy,
    KitchenDiskFull,
    KitchenDiskFault,
    MigrationFailed,  ///< "step" failed between the formats "found" and "known"
    RecipeNotFound,
    RecipeAmbiguous,      ///< "known" lists the titles
    RevisionNotFound,     ///< "recipe" has "known" of them
    LedgerIdUsed,         ///< an entry of that UUID is there
    LedgerEntryNotFound,  ///< the one that an entry refers to
    // the bench
    TagsNotSorted,        ///< conditions of a reading out of order, or "found" twice
    ScaleNotKnown,        ///< the kitchen has no scale called "found"; it has "known"
    ScaleAmbiguous,       ///< several scales, "known", and none was named
    VesselNotKnown,       ///< no vessel called "found"; it has "known"
    VesselOtherUnit,      ///< the vessel "found" was weighed in "unit", the scale shows "wanted"
    ReadingNotFound,      ///< no reading of that id, "found"
    ReadingOverruled,     ///< "found" was superseded before
    ReadingNotLeftOut,    ///< "found" counts already
    ReadingLeftOut,       ///< "found" is left out of its series, and was to be as weighed
    ReadingOfNoSeries,    ///< "found", which was to be as weighed in one
    NotOfTheScale,        ///< "found" is no multiple of the scale's step, "step"
    AboveCapacity,        ///< "found" is more than the scale takes, "most"
    SeriesNotFound,       ///< no series of "found"; there are series of "known"
    SeriesAmbiguous,      ///< several series, "known", and it was not said which
    SeriesOfOther,        ///< a line counts "wanted", the series is of "found"
    SeriesNotFollowed,    ///< no line of "recipe" counts by the series "found"
    SeriesShowsNoSpread,  ///< fewer than two readings of "found" count
    PoolOfOther,          ///< the series "found" is not of "wanted", as the one it is pooled with
    PoolWithItself,       ///< the readings of "found" are among those that are shown
    ReadingOfNothing,     ///< a reading of a series does not say what of, or of which food
    PairNotWhole,         ///< a reading "found" of a ratio names no reading before it
    LedgerWithoutHead,    ///< the ledger has no entry of the hash "found", as a printout names it
    // own foods
    OwnFoodNotFound,      ///< no own food or no version is called "found"
    OwnFoodIntoItself,    ///< merged with itself, or with what was merged into it
    OwnFoodMergedBefore,  ///< "food" stands for another one already
    // what a check of a kitchen finds
    PagesDamaged,          ///< by SQLite's own check
    LedgerBroken,          ///< the first entry that does not fit its hash or its place
    RevisionChanged,       ///< no longer what its hash says
    RevisionNotAsWeighed,  ///< an indication differs from the ledger
    RevisionFoodsChanged,  ///< the row "found" that it uses is not pinned
    LedgerShortened,       ///< it has no entry that a revision names as its newest
    FoodVersionChanged,
    OwnFoodChanged,  ///< a version of an own food, or what happened to it
    DraftDamaged,    ///< its edits do not apply, or the shelf tells something else
    // imports of public tables
    ImportStopped,
    ImportBusy,         ///< another import writes to that folder
    ImportFileMissing,  ///< the zip or folder has no file "found"
    ZipDamaged,         ///< no zip, or cut off: "reason"
    NotPublished,       ///< a file that is not written as its publisher writes it
    FieldsDiffer,       ///< "found" fields in a row, where "known" are
    UnitUnconvertible,  ///< of a component: its "unit" cannot become "wanted"
    RowRepeated,        ///< what this row tells was told before
    RowWithoutFood,     ///< of a food "found" that the list of foods does not have
    // columns of a CSV of foods
    FdcNoDate,  ///< no publication_date in food.csv
    CsvMappingNeeded,
    CsvOneFile,         ///< a zip or folder of none or several
    NotAMapping,        ///< a document of another format
    CsvNoHeader,        ///< a file without a row
    CsvQuoteOpen,       ///< up to the end of the file
    CsvLineTooLong,     ///< longer than "most" MiB
    CsvColumnMissing,   ///< that the mapping names: "column"; "known" lists those that are
    CsvColumnTwice,     ///< a header that the mapping names stands twice
    CsvUnitMissing,     ///< of "column"
    CsvUnitNotFitting,  ///< "found" of "column" is not to be converted to "wanted" of "component"
    // rows of a CSV, which are left out
    CsvNotUtf8,
    CsvTextAfterQuote,
    FoodNumberMissing,  ///< nothing in "column"
    FoodNumberTwice,
    FoodNameMissing,
    FoodTextNotClean,  ///< a number or name that isPlainLine() refuses
    // cells of a CSV, which are left out while the row stays
    CellNotANumber,
    CellNegative,
    CellTooLarge,          ///< more than "most" "unit" in 100 g
    MeasureWeighsNothing,  ///< a household measure of no weight
    // table files
    TableUnreadable,  ///< missing or damaged
    OlderTable,       ///< of format "found", made by an earlier program
    NotATable,        ///< some other file
};

/// A named value of an error: what the sentence quotes.
struct ErrorValue {
    std::string name;  ///< the slot of the sentence: "found", "most", "food" ...
    std::string text;  ///< as it was written, cut where long
};

/// An error: its code, its place and the values its sentence names. Carries no prose.
struct Error {
    ErrorCode code{};
    std::string file{};                ///< path as the caller gave it; may be empty
    std::string pointer{};             ///< RFC 6901 JSON pointer inside the file; may be empty
    int line = 0;                      ///< 1-based line in the file; 0 where no line is meant
    int column = 0;                    ///< 1-based column; 0 where no column is meant
    std::vector<ErrorValue> values{};  ///< a name may come more than once

    /// The same error with one more named value; long text is cut to 60 characters.
    [[nodiscard]] Error with(std::string_view name, std::string_view text) const;
    /// The same error at a JSON pointer, in place of the one it had.
    [[nodiscard]] Error at(std::string_view place) const;
    /// The first value of that name, or empty.
    [[nodiscard]] std::string_view value(std::string_view name) const;
};

}  // namespace nettare
