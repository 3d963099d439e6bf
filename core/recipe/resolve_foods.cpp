#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

#include <algorithm>

namespace nettare {

void DossierBuilder::addFoods(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.foods.size() && !failure_; ++i) {
        const FoodEntry& entry = document.foods[i];
        const std::string pointer = pointerTo("/foods", i);
        name(scope.names.foods, entry.id, scope.foods.size(), pointer);
        addFood(scope, entry, pointer);
    }
}

std::optional<LabelFacts> DossierBuilder::label(const FoodEntry& entry,
                                                const std::string& pointer) {
    if (!entry.label) return std::nullopt;
    LabelFacts facts{entry.label->rules, entry.label->servingGrams,
                     amount(entry.label->householdAmount, pointer + "/label/serving/amount"),
                     entry.label->householdUnit, entry.label->amounts};
    for (std::size_t i = 0; i < facts.amounts.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (facts.amounts[i].component == facts.amounts[j].component)
                note(Error{ErrorCode::DuplicateId}
                         .with("found", factsOf(facts.amounts[i].component).tagname)
                         .at(pointerTo(pointer + "/label/declares", i)));
    return facts;
}

void DossierBuilder::addFood(Scope& scope, const FoodEntry& entry, const std::string& pointer) {
    if (entry.recipe) {
        const auto loaded = recipeLookup_(*entry.recipe, scope.loaded.file);
        if (!loaded) return note(loaded.error());
        if (std::ranges::find(open_, loaded->file) != open_.end()) {
            std::string path;
            for (const std::string& file : open_) path += file + " → ";
            return note(Error{ErrorCode::RecipeCycle}
                            .with("path", path + loaded->file)
                            .at(pointer + "/recipe"));
        }
        if (open_.size() >= kRecipeNesting)
            return note(Error{ErrorCode::NestingTooDeep}.at(pointer + "/recipe"));
        const auto known = done_.find(loaded->file);
        const auto index = known != done_.end() ? Result<std::size_t>{known->second} : add(*loaded);
        if (!index) return note(index.error());
        scope.foods.push_back({RecipeIndex{*index}, entry.name});
        return;
    }
    const auto known = foodsByIdentity_.find(entry.identity);
    if (known != foodsByIdentity_.end()) {
        scope.foods.push_back({FoodIndex{known->second}, entry.name});
        return;
    }
    Food food;
    food.name = entry.name;
    food.identity = entry.identity;
    food.stated = entry.stated;
    food.label = label(entry, pointer);
    food.plant = entry.plant;
    if (entry.table) {
        const auto row = foodLookup_(*entry.table);
        if (!row) return note(row.error());
        if (!*row)
            return note(Error{ErrorCode::FoodNotFound}
                            .with("found", entry.table->text())
                            .at(pointer + "/table"));
        food.table = **row;
        food.plant = food.plant || food.table->plant;
        food.addedSugars = food.table->addedSugars;
    }
    if (entry.addedSugars) {
        food.addedSugarsGiven = true;
        food.addedSugars = {entry.addedSugars->kind, entry.addedSugars->per100g.value(),
                            entry.addedSugars->reason};
    }
    foodsByIdentity_.emplace(entry.identity, dossier_.foods.size());
    scope.foods.push_back({FoodIndex{dossier_.foods.size()}, entry.name});
    dossier_.foods.push_back(std::move(food));
}

}  // namespace nettare
