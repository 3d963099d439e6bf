#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_facts.h"
#include "core/food/table_food.h"
#include "core/quantity/decimal.h"
#include "core/quantity/unit.h"
#include "core/weighing/indication.h"
#include "core/weighing/series.h"

namespace nettare {

// A recipe document as it is written: references are still ids and amounts still text. Every member
// mirrors one of the published form (resources/schema/recipe.schema.json). makeDossier() resolves
// it.

struct ScaleEntry {
    std::string id, name, unit;
    Decimal readability;
    std::optional<Decimal> calibration;
};

struct VesselEntry {
    std::string id, name, scale;
    Decimal tare;
};

struct IndicationEntry {
    std::string id, scale;
    Decimal shown;
    WeighedState state = WeighedState::EdiblePortion;
    std::string at;
};

struct ReadingEntry {
    std::string id, gross;
    std::optional<std::string> tare;    ///< an indication
    std::optional<std::string> vessel;  ///< or a vessel with a known tare
    int pieces = 1;
};

struct PairEntry {
    std::string before, after;  ///< readings
};

struct SeriesEntry {
    std::string id, name;
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;  ///< the piece word or unit symbol that the series weighs; empty for ratios
    std::vector<std::string> readings;
    std::vector<PairEntry> pairs;  ///< ratios only
};

/// A value that the cook states for a food, with the reason; wins over table and label.
struct StatedValue {
    Component component;
    Decimal per100g;
    std::optional<Decimal> within;  ///< half-width; default half a unit of the last digit
    std::string reason;
};

struct AddedSugarsEntry {
    AddedSugarKind kind;
    Decimal per100g;  ///< for Stated
    std::string reason;
};

/// A label as printed: the household measure is still text.
struct LabelEntry {
    LabelRules rules = LabelRules::Us;
    Decimal servingGrams;
    std::string householdAmount;
    std::string householdUnit;
    std::vector<LabelAmount> amounts;
};

/// A food: any of a label, a table row, stated values; or a kept recipe.
struct FoodEntry {
    std::string id, name;
    std::optional<TableRow> table;
    std::optional<LabelEntry> label;
    std::vector<StatedValue> stated;
    std::optional<std::string> recipe;  ///< path of another document, relative to this one
    std::optional<AddedSugarsEntry> addedSugars;
    bool plant = false;    ///< unhydrogenated plant food: a missing FATRN is zero by kind
    std::string identity;  ///< canonical text of what it is, without id and name
};

/// How a line's grams were found; best first.
enum class Way { Weighed, Series, Label, Table, Density, Assumed };
[[nodiscard]] std::string_view nameOf(Way way);

enum class SeriesUse { Others, Among };

struct SeriesBinding {
    std::string series;
    SeriesUse use = SeriesUse::Others;
};

struct AssumedGrams {
    Decimal grams;
    Decimal within;  ///< half-width of a rectangle
    std::string reason;
};

struct LineEntry {
    std::string id;
    std::string amount;
    std::optional<std::string> unit;   ///< symbol of a unit
    std::optional<std::string> piece;  ///< or a piece word
    std::string food;
    std::string preparation;
    std::string size;                       ///< which of the table's measures: "sliced", "large"
    bool asPurchased = false;               ///< a weight as written is as purchased
    std::vector<std::string> weighed;       ///< readings; their nets add up
    std::optional<std::string> weighedFor;  ///< the amount they were weighed for
    std::optional<SeriesBinding> series;
    std::optional<std::string> trim;  ///< ratio series edible / bought
    std::optional<AssumedGrams> assumed;
    std::optional<Way> way;  ///< the cook's choice; default the best open one
};

struct StepEntry {
    std::string text;
};

/// What is not eaten, by what it is.
enum class ResidueKind { Line, Mixture, Drip, Unknown };

struct ResidueEntry {
    ResidueKind kind;
    std::vector<std::string> lines;   ///< of Line (one) and Mixture
    std::optional<std::string> food;  ///< of Drip
    std::vector<std::string> readings;
};

struct CookedEntry {
    std::vector<std::string> readings;
    std::vector<std::string> notEaten;  ///< readings of bones, shells, sticks in that weight
};

enum class Basis { Piece, Portion, Hundred, Batch };
[[nodiscard]] std::string_view nameOf(Basis basis);
[[nodiscard]] std::optional<Basis> basisNamed(std::string_view name);

struct TargetEntry {
    Component component;
    Basis per;
    std::optional<Decimal> atMost, atLeast;
};

/// Visible, editable assumptions; the defaults are the medians of the reference table's own
/// measures (14 % for pieces from 85 rows, 7 % for volumes from 132 rows).
struct Assumptions {
    Decimal pieceSpread{14, -2};
    Decimal volumeSpread{7, -2};
    Decimal spreadFreedom{8, 0};      ///< a spread known to about 25 % (JCGM 100:2008, G.4.2)
    Decimal declarationSpread{0, 0};  ///< relative half-width of labels beyond rounding
};

struct RecipeDocument {
    std::string title, note;
    MeasureSystem measures = MeasureSystem::UsCustomary;
    std::string pieces;
    std::string pieceWord, piecesWord;
    std::optional<std::string> portionPieces;
    std::optional<Decimal> portionGrams;
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
};

}  // namespace nettare
