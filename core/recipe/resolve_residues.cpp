#include <algorithm>

#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

namespace nettare {

// What drips off is a food; a kept recipe cannot drip as a whole.
void DossierBuilder::bindDrip(Scope& scope, const ResidueEntry& entry, Residue& residue) {
    if (!entry.food) return;
    const std::string place = residue.pointer + "/drip";
    const std::size_t food = find(scope.names.foods, *entry.food, place);
    if (failure_) return;
    if (const auto* index = std::get_if<FoodIndex>(&scope.foods[food].what))
        residue.food = index->index;
    else
        note(Error{ErrorCode::UnknownReference}.with("found", *entry.food).at(place));
}

// A share is of a line of the mixture, and no more than the whole of it.
void DossierBuilder::bindShares(Scope& scope, const ResidueEntry& entry, Residue& residue) {
    for (std::size_t i = 0; i < entry.shares.size() && !failure_; ++i) {
        const auto& [id, text] = entry.shares[i];
        const std::string place = pointerTo(residue.pointer + "/shares", i);
        const std::size_t line = find(scope.names.lines, id, place + "/line");
        const Amount share = amount(text, place + "/share");
        const bool inMixture = std::ranges::find(residue.lines, line) != residue.lines.end();
        if (!inMixture || share.isRange() || share.high() > Fraction{1})
            note(Error{ErrorCode::ShareNotOfMixture}
                     .with("found", text)
                     .with("line", id)
                     .at(place + "/share"));
        if (std::ranges::find(residue.shares, line, &Residue::Share::line) != residue.shares.end())
            note(Error{ErrorCode::DuplicateId}.with("found", id).at(place + "/line"));
        residue.shares.push_back({line, share.middle()});
    }
}

void DossierBuilder::checkStep(Scope& scope, const ResidueEntry& entry, const Residue& residue) {
    const int step = entry.mixedAt.value_or(1);
    if (entry.mixedAt && static_cast<std::size_t>(step) > scope.loaded.document.steps.size())
        note(Error{ErrorCode::UnknownReference}
                 .with("found", std::to_string(step))
                 .at(residue.pointer + "/mixed_at"));
}

std::vector<OtherCook> DossierBuilder::otherCooks(Scope& scope,
                                                  const std::vector<CookReadings>& entries,
                                                  const std::string& pointer) {
    std::vector<OtherCook> cooks;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string place = pointerTo(pointer + "/other_cooks", i);
        cooks.push_back({findAll(scope.names.readings, entries[i].readings, place + "/readings"),
                         findAll(scope.names.readings, entries[i].notEaten, place + "/not_eaten")});
    }
    return cooks;
}

Residue DossierBuilder::residue(Scope& scope, const ResidueEntry& entry,
                                const std::string& pointer) {
    Residue residue;
    residue.kind = entry.kind;
    residue.called = entry.called;
    residue.pointer = pointer;
    if (entry.kind == ResidueKind::Line)
        residue.lines = {find(scope.names.lines, entry.lines.front(), pointer + "/line")};
    else
        residue.lines = findAll(scope.names.lines, entry.lines, pointer + "/mixture");
    bindShares(scope, entry, residue);
    checkStep(scope, entry, residue);
    bindDrip(scope, entry, residue);
    residue.readings = findAll(scope.names.readings, entry.readings, pointer + "/readings");
    residue.otherCooks = otherCooks(scope, entry.otherCooks, pointer);
    return residue;
}

void DossierBuilder::addResidues(Scope& scope, Recipe& recipe) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.residues.size() && !failure_; ++i)
        recipe.residues.push_back(residue(scope, document.residues[i], pointerTo("/residues", i)));
    if (!document.cooked) return;
    recipe.cooked = findAll(scope.names.readings, document.cooked->readings, "/cooked/readings");
    recipe.notEaten = findAll(scope.names.readings, document.cooked->notEaten, "/cooked/not_eaten");
    recipe.otherCooks = otherCooks(scope, document.cooked->otherCooks, "/cooked");
}

}  // namespace nettare
