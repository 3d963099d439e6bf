#include <algorithm>

#include "core/recipe/counted_amount.h"
#include "core/recipe/dossier.h"
#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

namespace nettare {

namespace {

bool usesKept(const RecipeDocument& document) {
    return std::ranges::any_of(document.foods,
                               [](const FoodEntry& food) { return food.recipe.has_value(); });
}

}  // namespace

// The first error stands: later ones are often its children.
void DossierBuilder::note(const Error& error) {
    if (!failure_) failure_ = error;
}

// Ids are unique within their list; a line and a food may share one.
void DossierBuilder::name(Ids& ids, const std::string& id, std::size_t index,
                          const std::string& pointer) {
    if (!ids.emplace(id, index).second)
        note(Error{ErrorCode::DuplicateId}.with("found", id).at(pointer + "/id"));
}

// After an unknown id the answer is 0, which may not exist; callers look at failure_ before they
// use it.
std::size_t DossierBuilder::find(const Ids& ids, const std::string& id,
                                 const std::string& pointer) {
    const auto found = ids.find(id);
    if (found != ids.end()) return found->second;
    note(Error{ErrorCode::UnknownReference}.with("found", id).at(pointer));
    return 0;
}

// A reading or line named twice in one list would count twice, so that is refused as well.
std::vector<std::size_t> DossierBuilder::findAll(const Ids& ids,
                                                 const std::vector<std::string>& wanted,
                                                 const std::string& pointer) {
    std::vector<std::size_t> found;
    for (const std::string& id : wanted) {
        const std::string place = pointerTo(pointer, found.size());
        const std::size_t index = find(ids, id, place);
        if (std::ranges::find(found, index) != found.end())
            note(Error{ErrorCode::DuplicateId}.with("found", id).at(place));
        found.push_back(index);
    }
    return found;
}

// An unreadable amount becomes 1, so that the rest of the document can still be walked.
Amount DossierBuilder::amount(const std::string& text, const std::string& pointer) {
    const auto read = readAmount(text);
    if (read) return *read;
    note(read.error().at(pointer));
    return {Fraction{1}, Fraction{1}, text};
}

Count DossierBuilder::count(const std::string& text, const std::string& pointer) {
    const Amount read = amount(text, pointer);
    if (read.isRange()) note(Error{ErrorCode::RangeNotAllowed}.with("found", text).at(pointer));
    return Count::from(read.low()).value_or(Count{});
}

// "4-6" is five, give or take one, unless the document says which end counts.
void DossierBuilder::countPieces(const RecipeDocument& document, Recipe& recipe) {
    const Amount makes = counted(amount(document.pieces, "/makes/pieces"), document.counting.makes);
    auto pieces = makes.low();
    if (makes.isRange()) {
        const auto sum = makes.low().plus(makes.high());
        const auto middle = sum ? sum->dividedBy(Fraction{2}) : std::nullopt;
        if (!middle)
            note(
                Error{ErrorCode::AmountTooLong}.with("found", document.pieces).at("/makes/pieces"));
        pieces = middle.value_or(pieces);
        recipe.piecesRange = makes;
    }
    recipe.pieces = Count::from(pieces).value_or(Count{});
}

// Only pieces that were weighed one by one tell how they differ.
void DossierBuilder::bindPieceSeries(Scope& scope, Recipe& recipe) {
    const auto& weighed = scope.loaded.document.piecesWeighed;
    if (!weighed) return;
    const std::size_t index = find(scope.names.series, *weighed, "/makes/weighed");
    if (failure_) return;
    if (dossier_.series[index].kind == SeriesKind::PerPiece)
        recipe.pieceSeries = index;
    else
        note(Error{ErrorCode::NoSeriesOfPieces}
                 .with("found", *weighed)
                 .with("key", "weighed")
                 .at("/makes/weighed"));
}

void DossierBuilder::addYield(Scope& scope, Recipe& recipe) {
    const RecipeDocument& document = scope.loaded.document;
    recipe.file = scope.loaded.file;
    recipe.title = document.title;
    countPieces(document, recipe);
    recipe.pieceWord = document.pieceWord;
    recipe.piecesWord = document.piecesWord;
    bindPieceSeries(scope, recipe);
    if (document.portionPieces)
        recipe.portionPieces = count(*document.portionPieces, "/portion/pieces");
    recipe.portionGrams = document.portionGrams;
    recipe.targets = document.targets;
    recipe.assumptions = document.assumptions;
    recipe.counting = document.counting;
}

// The recipe takes its place in the list before its kept recipes do, so that the outermost is the
// first; foods come after readings, since a kept recipe brings readings of its own.
Result<std::size_t> DossierBuilder::add(const LoadedRecipe& loaded) {
    const std::size_t index = dossier_.recipes.size();
    dossier_.recipes.emplace_back();
    open_.push_back(loaded.file);
    if (usesKept(loaded.document)) weighing_.share();
    Scope scope{loaded, {}, {}};
    addScales(scope);
    addIndications(scope);
    addReadings(scope);
    addSeries(scope);
    addFoods(scope);
    Recipe recipe;
    addYield(scope, recipe);
    addLines(scope, recipe);
    countLines(recipe);
    addResidues(scope, recipe);
    open_.pop_back();
    if (failure_) {
        if (failure_->file.empty()) failure_->file = loaded.file;
        return fail(*failure_);
    }
    dossier_.recipes[index] = std::move(recipe);
    done_.emplace(loaded.file, index);
    return index;
}

Result<Dossier> makeDossier(const LoadedRecipe& recipe, const FoodLookup& foods,
                            const RecipeLookup& recipes) {
    DossierBuilder builder{foods, recipes};
    const auto added = builder.add(recipe);
    if (!added) return fail(added.error());
    return builder.take();
}

}  // namespace nettare
