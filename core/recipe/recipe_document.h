#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/food_state.h"
#include "core/food/label_json.h"
#include "core/food/table_food.h"
#include "core/quantity/decimal.h"
#include "core/quantity/unit.h"
#include "core/weighing/indication.h"
#include "core/weighing/series.h"

namespace nettare {

// A recipe document as it is written: references are still ids and amounts still text. Every member
// mirrors one of the published form (resources/schema/recipe.schema.json). makeDossier() resolves
// it.

/// A scale: "scales".
struct ScaleEntry {
    std::string id;                      ///< how the document refers to it
    std::string name;                    ///< as the cook calls it
    std::string unit;                    ///< symbol of the mass unit it shows
    Decimal readability;                 ///< d, the smallest step it shows, in that unit; > 0
    std::optional<Decimal> calibration;  ///< relative standard uncertainty, where it was checked
};

/// A vessel with a known tare: "vessels".
struct VesselEntry {
    std::string id, name;
    std::string scale;  ///< id of the scale that weighed it
    Decimal tare;       ///< as shown, in that scale's unit; >= 0
};

/// What a scale showed once: "indications".
struct IndicationEntry {
    std::string id;
    std::string scale;  ///< id
    Decimal shown;      ///< in the scale's unit; may be negative on a tared scale
    WeighedState state = WeighedState::EdiblePortion;
    std::string at;  ///< ISO 8601 with offset; empty where not recorded
};

/// The difference of an indication and a tare: "readings". Exactly one of the two tares is given.
struct ReadingEntry {
    std::string id;
    std::string gross;                  ///< id of an indication
    std::optional<std::string> tare;    ///< an indication
    std::optional<std::string> vessel;  ///< or a vessel with a known tare
    int pieces = 1;                     ///< weighed together; 1 to 9999
};

/// One pair of a ratio series, as ids of readings: bought and trimmed, raw and cooked.
struct PairEntry {
    std::string before, after;
};

/// Which yield series of the bench's ledger a series of the document follows: "bench".
struct BenchEntry {
    std::string what;  ///< food or thing, as the cook calls it
    std::string of;    ///< ratios only: "edible / bought"; else SeriesEntry::of says it
    std::vector<std::string> tags;  ///< conditions that its readings bear, sorted, each once

    friend bool operator==(const BenchEntry&, const BenchEntry&) = default;
};

/// The spread of an earlier series that a series of the document is pooled with: "pooled_with".
struct EarlierEntry {
    std::string name;   ///< of that series, for whoever asks
    Decimal spread;     ///< grams; of ratios a share of what went in; > 0
    Decimal freedom{};  ///< degrees of freedom that it is known by; > 0

    friend bool operator==(const EarlierEntry&, const EarlierEntry&) = default;
};

/// Repeated readings of one thing: "series".
struct SeriesEntry {
    std::string id, name;
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;  ///< the piece word or unit symbol that the series weighs; empty for ratios
    std::vector<std::string> readings;      ///< ids; empty for ratios
    std::vector<PairEntry> pairs;           ///< ratios only
    bool pooled = false;                    ///< its spread together with the assumed one
    std::optional<EarlierEntry> earlier{};  ///< or with that of an earlier series; goes before
    std::optional<BenchEntry> bench{};
};

/// A value that the cook states for a food, with the reason; wins over table and label.
struct StatedValue {
    Component component;
    Decimal per100g;                ///< in the component's unit, of edible portion; >= 0
    std::optional<Decimal> within;  ///< half-width; default half a unit of the last digit
    std::string reason;             ///< where the value comes from, for whoever asks
};

/// What part of a food's sugars is added: "added_sugars"; wins over the trait of the table row.
struct AddedSugarsEntry {
    AddedSugarKind kind;
    Decimal per100g;     ///< g, for Stated
    std::string reason;  ///< why, for whoever asks
};

/// A food: any of a label, a table row, stated values; or a kept recipe.
struct FoodEntry {
    std::string id, name;
    std::optional<TableRow> table;      ///< a row of a public table
    std::optional<LabelEntry> label;    ///< wins over the row for what it prints
    std::vector<StatedValue> stated;    ///< wins over both
    std::optional<std::string> recipe;  ///< path of another document, relative to this one
    std::optional<AddedSugarsEntry> addedSugars;
    bool plant = false;    ///< unhydrogenated plant food: a missing FATRN is zero by kind
    std::string identity;  ///< canonical text of what it is, without id and name
};

/// How a line's grams were found; best first.
enum class Way { Weighed, Series, Label, Table, Density, Assumed };
[[nodiscard]] std::string_view nameOf(Way way);

/// Whether a line's pieces are other ones than those of the series, or hold them: the weighed ones
/// then add no scatter of their own.
enum class SeriesUse { Others, Among };

/// A line's grams by a series of the cook's own.
struct SeriesBinding {
    std::string series;  ///< id
    SeriesUse use = SeriesUse::Others;
};

/// A line's grams as the cook assumes them.
struct AssumedGrams {
    Decimal grams;   ///< of the whole line; > 0
    Decimal within;  ///< half-width of a rectangle
    std::string reason;
};

/// How a spoon or cup is filled.
enum class Fill { Heaping, Rounded, Generous, Level, Scant };

/// An amount of a unit of mass or volume, as written.
struct MeasuredAmount {
    std::string amount;  ///< "14.5"
    std::string unit;    ///< symbol
};

/// From the state that a line is weighed in to the state of its food's values: cooked / raw,
/// drained / whole tin. By a ratio series, or by a factor with its reason.
struct StateYield {
    FoodState to = FoodState::Cooked;   ///< the state after it
    std::optional<std::string> series;  ///< a ratio series, after / before
    bool inverse = false;               ///< divided by it: the series goes the other way
    std::optional<Decimal> factor;      ///< or weight after / weight before; > 0
    Decimal within;                     ///< half-width of the factor
    std::string reason;
};

/// What one millilitre weighs, as the cook states it: of a named group of foods, or measured.
struct StatedDensity {
    Decimal gramsPerMl;  ///< > 0
    Decimal within;      ///< half-width of a rectangle
    std::string reason;  ///< "vegetable oils: median of 12 rows"
};

/// One ingredient line: "lines". Its grams are found by the best of the ways that it opens.
struct LineEntry {
    std::string id;
    std::string written;                    ///< as the cook wrote it; empty where not kept
    bool toTaste = false;                   ///< no amount is written: counted by Counting::toTaste
    bool optional = false;                  ///< counted by Counting::optional
    std::string amount;                     ///< as typed: "1 1/2", "2-3"; empty for to taste
    std::optional<std::string> unit;        ///< symbol of a unit
    std::optional<std::string> piece;       ///< or a piece word
    std::optional<Fill> fill;               ///< of spoons and cups
    std::optional<MeasuredAmount> each;     ///< one piece as its pack says: "400 g" of a tin
    std::optional<MeasuredAmount> equals;   ///< the whole line said once more: "1 cup (120 g)"
    std::string food;                       ///< id
    std::string preparation;                ///< "sliced"; may pick one of the table's measures
    std::string size;                       ///< which of the table's measures: "sliced", "large"
    bool asPurchased = false;               ///< a weight as written is as purchased
    std::optional<FoodState> state;         ///< what is weighed; default: that of the food's row
    std::vector<std::string> weighed;       ///< readings; their nets add up
    std::optional<std::string> weighedFor;  ///< the amount they were weighed for
    std::optional<SeriesBinding> series;  ///< grams a piece or a measure, by the cook's own series
    std::optional<std::string> trim;      ///< ratio series edible / bought
    std::optional<StateYield> yield;      ///< to the state of the food's values
    std::optional<StatedDensity> density;
    std::optional<AssumedGrams> assumed;
    std::optional<Way> way;  ///< the cook's choice; default the best open one
};

/// One step of the method: "steps".
struct StepEntry {
    std::string text;
};

/// What is not eaten, by what it is.
enum class ResidueKind {
    Line,     ///< one line
    Mixture,  ///< lines as they were mixed: each loses the same share of what was in
    Drip,     ///< what ran off, with a food of its own
    Unknown,  ///< anything between the leanest and the richest line
    Water,    ///< cooking water poured off: carries nothing but water
    NotEaten  ///< bones, shells, bay leaves that went in with the lines: carry nothing away
};

/// So much of a line was in the mixture: 2/3 of the oil.
struct ShareEntry {
    std::string line;   ///< id
    std::string share;  ///< as typed; above 0, at most 1
};

/// The same weight at another test cook of this revision: "other_cooks". The recipe mean is that of
/// all its test cooks.
struct CookReadings {
    std::vector<std::string> readings;  ///< ids; their nets add up
    std::vector<std::string> notEaten;  ///< of a cooked weight
};

/// "residues": what stayed in bowl or pan, by weighing.
struct ResidueEntry {
    ResidueKind kind = ResidueKind::Unknown;
    std::vector<std::string> lines;     ///< of Line (one) and Mixture
    std::vector<ShareEntry> shares;     ///< of Mixture; a line without one was in as a whole
    std::optional<int> mixedAt;         ///< of Mixture: number of the step, from 1
    std::optional<std::string> food;    ///< id, of Drip
    std::string called;                 ///< "frying oil", for people; may be empty
    std::vector<std::string> readings;  ///< ids; their nets add up
    std::vector<CookReadings> otherCooks;
};

/// "cooked": the weight of the finished batch.
struct CookedEntry {
    std::vector<std::string> readings;  ///< ids; their nets add up
    std::vector<std::string> notEaten;  ///< readings of bones, shells, sticks in that weight
    std::vector<CookReadings> otherCooks;
};

/// What figures are per; Hundred is 100 g of the dish as eaten.
enum class Basis { Piece, Portion, Hundred, Batch };
[[nodiscard]] std::string_view nameOf(Basis basis);
[[nodiscard]] std::optional<Basis> basisNamed(std::string_view name);

/// A ceiling or a floor: "targets". One of the two is given.
struct TargetEntry {
    Component component;
    Basis per;
    std::optional<Decimal> atMost, atLeast;  ///< in the component's unit; > 0
};

/// Visible, editable assumptions; the defaults are the medians of the reference table's own
/// measures (14 % for pieces from 85 rows, 7 % for volumes from 132 rows).
struct Assumptions {
    Decimal pieceSpread{14, -2};      ///< relative standard deviation of a table's piece
    Decimal volumeSpread{7, -2};      ///< of a table's spoon or cup
    Decimal spreadFreedom{8, 0};      ///< a spread known to about 25 % (JCGM 100:2008, G.4.2)
    Decimal declarationSpread{0, 0};  ///< relative half-width of labels beyond rounding
    /// Relative standard deviation of a table's values that have none; by default the table's own
    /// median of the food's group.
    std::optional<Decimal> compositionSpread{};

    friend bool operator==(const Assumptions&, const Assumptions&) = default;
};

/// How the salt of "salt to taste" counts.
enum class ToTasteRule {
    LeftOut,       ///< not at all; the figures say so
    PinchAPortion  ///< a pinch for each portion
};
/// How optional lines count.
enum class OptionalRule { Counted, LeftOut, Between };
/// How a range counts: "2-3 cloves", "serves 4-6".
enum class RangeRule {
    Middle,  ///< with the range as its uncertainty
    Least,
    Most
};

/// "counting": what is counted where the recipe leaves it open; visible on the sheet.
struct Counting {
    ToTasteRule toTaste = ToTasteRule::LeftOut;
    OptionalRule optional = OptionalRule::Counted;
    RangeRule ranges = RangeRule::Middle;  ///< of amounts
    RangeRule makes = RangeRule::Middle;   ///< of the number of pieces

    friend bool operator==(const Counting&, const Counting&) = default;
};

/// The whole document.
struct RecipeDocument {
    std::string title, note;
    MeasureSystem measures = MeasureSystem::UsCustomary;  ///< whose spoons and cups the lines mean
    std::string pieces;                                   ///< how many the batch makes, as typed
    std::string pieceWord, piecesWord;                    ///< "skewer", "skewers"
    std::optional<std::string> piecesWeighed;             ///< id of a series of finished pieces
    std::optional<std::string> portionPieces;             ///< a portion is so many pieces
    std::optional<Decimal> portionGrams;                  ///< or so many grams of the cooked dish
    std::vector<ScaleEntry> scales;
    std::vector<VesselEntry> vessels;
    std::vector<IndicationEntry> indications;
    std::vector<ReadingEntry> readings;
    std::vector<SeriesEntry> series;
    std::vector<FoodEntry> foods;
    std::vector<LineEntry> lines;
    std::vector<StepEntry> steps;
    std::vector<ResidueEntry> residues;
    std::optional<CookedEntry> cooked;
    std::vector<TargetEntry> targets;
    Assumptions assumptions;
    Counting counting;
};

}  // namespace nettare
