#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/recipe/dossier.h"
#include "core/recipe/shared_weighing.h"

namespace nettare {

/// The work of makeDossier(): adds one document after the other. Each part notes the first error.
class DossierBuilder {
public:
    DossierBuilder(const FoodLookup& foods, const RecipeLookup& recipes)
        : foodLookup_{foods}, recipeLookup_{recipes} {}

    /// Adds a document and what it uses; answers the index of its recipe.
    Result<std::size_t> add(const LoadedRecipe& loaded);
    Dossier take() { return std::move(dossier_); }

private:
    using Ids = std::map<std::string, std::size_t, std::less<>>;

    /// The ids of the document that is being added.
    struct Names {
        Ids scales, vessels, indications, readings, series, foods, lines;
    };
    struct FoodOrRecipe {
        std::variant<FoodIndex, RecipeIndex> what;
        std::string name;
    };
    struct Scope {
        const LoadedRecipe& loaded;
        Names names;
        std::vector<FoodOrRecipe> foods;
    };

    // In this order: later parts refer to earlier ones.
    void addScales(Scope& scope);
    void addIndications(Scope& scope);
    void addReadings(Scope& scope);
    void addSeries(Scope& scope);
    void checkSeries(const SeriesData& series, const std::string& pointer);
    void checkReading(const Reading& reading, const std::string& pointer);
    void addFoods(Scope& scope);
    void addKept(Scope& scope, const FoodEntry& entry, const std::string& pointer);
    void addTableRow(const FoodEntry& entry, const std::string& pointer, Food& food);
    void addFood(Scope& scope, const FoodEntry& entry, const std::string& pointer);
    std::optional<LabelFacts> label(const FoodEntry& entry, const std::string& pointer);
    /// Counts lines with those of kept recipes written out; refuses more than kMostWrittenOut.
    void countLines(Recipe& recipe);
    void checkKept(const LineEntry& entry, const Line& line);
    void addLines(Scope& scope, Recipe& recipe);
    Line line(Scope& scope, const LineEntry& entry, const std::string& pointer);
    void bindSeries(Scope& scope, const LineEntry& entry, Line& line);
    void bindTrim(Scope& scope, const LineEntry& entry, Line& line);
    void bindYield(Scope& scope, const LineEntry& entry, Line& line);
    std::size_t ratioSeries(Scope& scope, const std::string& id, const std::string& place);
    std::optional<UnitAmount> quantity(Scope& scope, const std::optional<MeasuredAmount>& measured,
                                       const std::string& pointer);
    const Unit* unit(Scope& scope, const std::string& symbol, const std::string& pointer);
    void addResidues(Scope& scope, Recipe& recipe);
    std::vector<OtherCook> otherCooks(Scope& scope, const std::vector<CookReadings>& entries,
                                      const std::string& pointer);
    Residue residue(Scope& scope, const ResidueEntry& entry, const std::string& pointer);
    void bindShares(Scope& scope, const ResidueEntry& entry, Residue& residue);
    void bindDrip(Scope& scope, const ResidueEntry& entry, Residue& residue);
    void checkStep(Scope& scope, const ResidueEntry& entry, const Residue& residue);
    void bindPieceSeries(Scope& scope, Recipe& recipe);
    void addYield(Scope& scope, Recipe& recipe);

    // Small services: the first error, ids, amounts.
    void note(const Error& error);
    void name(Ids& ids, const std::string& id, std::size_t index, const std::string& pointer);
    std::size_t find(const Ids& ids, const std::string& id, const std::string& pointer);
    std::vector<std::size_t> findAll(const Ids& ids, const std::vector<std::string>& wanted,
                                     const std::string& pointer);
    Amount amount(const std::string& text, const std::string& pointer);
    /// The amount that counts by the document's rule for ranges.
    Amount lineAmount(Scope& scope, const std::string& text, const std::string& pointer);
    Count count(const std::string& text, const std::string& pointer);
    void countPieces(const RecipeDocument& document, Recipe& recipe);

    const FoodLookup& foodLookup_;
    const RecipeLookup& recipeLookup_;
    Dossier dossier_;
    SharedWeighing weighing_{dossier_};
    std::vector<std::string> open_;            ///< files being added, outermost first
    std::map<std::string, std::size_t> done_;  ///< file to index of its recipe
    Ids foodsByIdentity_;
    std::optional<Error> failure_;
};

}  // namespace nettare
