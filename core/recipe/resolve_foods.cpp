#include <algorithm>

#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

namespace nettare {

namespace {

/// The first entry whose component stands in an earlier one, as an error at its pointer.
template <class Entries>
std::optional<Error> componentTwice(const Entries& entries, const std::string& pointer) {
    for (std::size_t i = 0; i < entries.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (entries[i].component == entries[j].component)
                return Error{ErrorCode::DuplicateId}
                    .with("found", factsOf(entries[i].component).tagname)
                    .at(pointerTo(pointer, i));
    return std::nullopt;
}

}  // namespace

void DossierBuilder::addFoods(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.foods.size() && !failure_; ++i) {
        const FoodEntry& entry = document.foods[i];
        const std::string pointer = pointerTo("/foods", i);
        name(scope.names.foods, entry.id, scope.foods.size(), pointer);
        if (entry.recipe)
            addKept(scope, entry, pointer);
        else
            addFood(scope, entry, pointer);
    }
}

void DossierBuilder::addKept(Scope& scope, const FoodEntry& entry, const std::string& pointer) {
    const std::string place = pointer + "/recipe";
    const auto loaded = recipeLookup_(*entry.recipe, scope.loaded.file);
    if (!loaded) {
        Error error = loaded.error();
        error.values.push_back({"used_by", scope.loaded.file + ", " + place});
        return note(error);
    }
    const auto round = std::ranges::find(open_, loaded->file);
    if (round != open_.end()) {
        Error error = Error{ErrorCode::RecipeCycle}.at(place);
        std::string path;
        for (auto file = round; file != open_.end(); ++file) path += *file + " → ";
        error.values.push_back({"path", path + loaded->file});
        return note(error);
    }
    if (open_.size() >= kRecipeNesting)
        return note(Error{ErrorCode::NestingTooDeep}
                        .with("most", std::to_string(kRecipeNesting))
                        .at(place));
    const auto known = done_.find(loaded->file);
    const auto index = known != done_.end() ? Result<std::size_t>{known->second} : add(*loaded);
    if (!index) return note(index.error());
    scope.foods.push_back({RecipeIndex{*index}, entry.name});
}

std::optional<LabelFacts> DossierBuilder::label(const FoodEntry& entry,
                                                const std::string& pointer) {
    if (!entry.label) return std::nullopt;
    auto label = labelFrom(*entry.label, pointer + "/label");
    if (label) return std::move(*label);
    note(label.error().with("food", entry.name));
    return std::nullopt;
}

void DossierBuilder::addTableRow(const FoodEntry& entry, const std::string& pointer, Food& food) {
    if (!entry.table) return;
    const auto row = foodLookup_(*entry.table);
    if (!row) return note(row.error());
    if (!*row)
        return note(Error{ErrorCode::FoodNotFound}
                        .with("found", entry.table->text())
                        .at(pointer + "/table"));
    food.table = **row;
    food.plant = food.plant || food.table->plant;
    food.addedSugars = food.table->addedSugars;
    if (food.label || !food.table->label) return;
    food.label = food.table->label;
    food.labelOfRow = true;
}

void DossierBuilder::addFood(Scope& scope, const FoodEntry& entry, const std::string& pointer) {
    const auto known = foodsByIdentity_.find(entry.identity);
    if (known != foodsByIdentity_.end()) {
        scope.foods.push_back({FoodIndex{known->second}, entry.name});
        return;
    }
    if (const auto twice = componentTwice(entry.stated, pointer + "/stated")) note(*twice);
    Food food;
    food.name = entry.name;
    food.identity = entry.identity;
    food.file = scope.loaded.file;
    food.pointer = pointer;
    food.stated = entry.stated;
    food.label = label(entry, pointer);
    food.plant = entry.plant;
    addTableRow(entry, pointer, food);
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
