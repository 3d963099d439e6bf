#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/food/label_facts.h"
#include "core/food/table_food.h"
#include "core/quantity/amount.h"
#include "core/quantity/count.h"
#include "core/recipe/recipe_document.h"
#include "core/support/result.h"
#include "core/weighing/indication.h"
#include "core/weighing/series.h"

namespace nettare {

/// A food with all that is known of it. Two entries of one identity are one food.
struct Food {
    std::string name;
    std::string identity;
    std::optional<TableFood> table;
    std::optional<LabelFacts> label;
    bool labelOfRow = false;  ///< else of the document, which may be another product
    std::vector<StatedValue> stated;
    AddedSugars addedSugars;
    bool addedSugarsGiven = false;  ///< by the document; else by the table row
    bool plant = false;
    std::string file, pointer;  ///< where it first stands, for errors
};

/// A series with its readings resolved to indices of Dossier::readings.
struct SeriesData {
    std::string id, name;
    SeriesKind kind = SeriesKind::PerPiece;
    std::string of;
    std::vector<std::size_t> readings;
    std::vector<std::pair<std::size_t, std::size_t>> pairs;  ///< before, after
    bool pooled = false;                    ///< its spread together with the assumed one
    std::optional<EarlierEntry> earlier{};  ///< or with that of an earlier series; goes before
    std::optional<BenchEntry> bench{};      ///< the ledger's series that it follows
};

/// What a line is made of: a food or a kept recipe of the same dossier.
struct FoodIndex {
    std::size_t index;
};
struct RecipeIndex {
    std::size_t index;
};

/// An exact amount of a unit of mass or volume.
struct UnitAmount {
    Amount amount;
    const Unit* unit;
};

/// A StateYield with its series as an index.
struct YieldData {
    FoodState to = FoodState::Cooked;
    std::optional<std::size_t> series;
    bool inverse = false;
    double factor = 1, within = 0;  ///< where no series
    std::string reason;
};

struct Line {
    std::string id;
    Amount amount{Fraction{1}, Fraction{1}, "1"};
    const Unit* unit = nullptr;  ///< null where the line counts pieces
    std::string piece;           ///< the piece word; empty where a unit is given
    std::variant<FoodIndex, RecipeIndex> what;
    std::string name;  ///< of the food, as this document calls it
    std::string preparation, size;
    bool toTaste = false;  ///< the amount is 1 of nothing: no way may use it
    bool optional = false;
    std::optional<Fill> fill;
    std::optional<UnitAmount> each, equals;
    std::optional<FoodState> state;
    bool asPurchased = false;
    std::vector<std::size_t> weighed;
    double weighedFactor = 1;  ///< amount / amount weighed for
    double tried = 1;          ///< grams times this, where a cook only tries another amount
    struct SeriesRef {
        std::size_t series;
        SeriesUse use;
    };
    std::optional<SeriesRef> series;
    std::optional<std::size_t> trim;
    std::optional<YieldData> yield;
    std::optional<StatedDensity> density;
    std::optional<AssumedGrams> assumed;
    std::optional<Way> way;
    std::string pointer;  ///< where the line stands, for errors
};

/// The same weight at another test cook, as readings.
struct OtherCook {
    std::vector<std::size_t> readings, notEaten;
};

struct Residue {
    /// A line of a mixture and how much of it was in.
    struct Share {
        std::size_t line;
        double share;  ///< of the line as used; above 0, at most 1
    };

    ResidueKind kind = ResidueKind::Line;
    std::vector<std::size_t> lines;
    std::vector<Share> shares;  ///< lines that are not named here were in as a whole
    std::optional<std::size_t> food;
    std::vector<std::size_t> readings;
    std::vector<OtherCook> otherCooks;
    std::string called;
    std::string pointer;
};

/// One recipe of a dossier, resolved.
struct Recipe {
    std::string file, title;
    Count pieces;                       ///< of a range its middle, or the end that counts
    std::optional<Amount> piecesRange;  ///< where the middle of a range counts
    std::string pieceWord, piecesWord;
    std::optional<std::size_t> pieceSeries;  ///< finished pieces that were weighed one by one
    std::optional<Count> portionPieces;
    std::optional<Decimal> portionGrams;
    std::vector<Line> lines;
    std::vector<Residue> residues;
    std::vector<std::size_t> cooked, notEaten;  ///< readings; cooked empty = not weighed
    std::vector<OtherCook> otherCooks;          ///< the cooked weight at others
    std::size_t writtenOut = 0;  ///< lines, with those of kept recipes in place of their use
    std::vector<TargetEntry> targets;
    Assumptions assumptions;
    Counting counting;
};

/// Everything that figures depend on: figures = f(dossier). All references are indices. The recipe
/// asked for is the first; kept recipes used as ingredients follow it, each once.
struct Dossier {
    std::vector<Scale> scales;
    std::vector<Vessel> vessels;
    std::vector<Indication> indications;
    std::vector<Reading> readings;
    std::vector<SeriesData> series;
    std::vector<Food> foods;
    std::vector<Recipe> recipes;

    [[nodiscard]] const Recipe& main() const { return recipes.front(); }
};

/// Gives the row of a public table; nothing where the table has no such number.
using FoodLookup = std::function<Result<std::optional<TableFood>>(const TableRow&)>;

/// A document with the name of the file it came from.
struct LoadedRecipe {
    std::string file;
    RecipeDocument document;
};

/// Opens the document that a food of `fromFile` names as its recipe.
using RecipeLookup =
    std::function<Result<LoadedRecipe>(const std::string& reference, const std::string& fromFile)>;

/// Resolves a document and the kept recipes it uses: references to indices, amounts to exact
/// numbers, units by the document's measures. Refuses what refers to nothing, recipes that contain
/// themselves (RecipeCycle, the path named), nesting deeper than eight and recipes that grow beyond
/// kMostWrittenOut lines by using one another (TooManyLines). Errors carry file and pointer; where
/// a kept recipe cannot be read, the value "used_by" says who asked for it.
[[nodiscard]] Result<Dossier> makeDossier(const LoadedRecipe& recipe, const FoodLookup& foods,
                                          const RecipeLookup& recipes);

inline constexpr std::size_t kRecipeNesting = 8;
/// Ten lines that each use a recipe of ten such lines, eight deep, would be 10^8.
inline constexpr std::size_t kMostWrittenOut = 2000;

/// Net weight of a reading in grams, exactly in decimal before the one conversion.
[[nodiscard]] double netGrams(const Dossier& dossier, const Reading& reading);

}  // namespace nettare
