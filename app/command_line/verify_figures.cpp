#include "app/command_line/verify_figures.h"

#include <algorithm>

#include "app/command_line/kitchen_recipes.h"
#include "core/publish/figures_json.h"

namespace nettare {

namespace {

bool isNamed(const std::vector<Error>& faults, const std::string& recipe,
             const std::string& revision) {
    return std::ranges::any_of(faults, [&](const Error& fault) {
        return fault.value("recipe") == recipe && fault.value("revision") == revision;
    });
}

/// Of an older arithmetic nobody can tell.
bool hasItsFigures(const Kitchen& kitchen, const KeptReference& reference) {
    const auto recipe = openRevision(kitchen, reference);
    if (!recipe) return false;
    const KeptFigures& kept = *recipe->kept;
    return kept.arithmetic < kArithmeticVersion ||
           !differFromToday(kept, recipe->dossier, recipe->cooked);
}

}  // namespace

std::vector<Error> changedFigures(const Kitchen& kitchen, const std::vector<Error>& found) {
    std::vector<Error> changed;
    const auto recipes = kitchen.recipes();
    if (!recipes) return changed;
    for (const ShelvedRecipe& recipe : *recipes)
        for (int number = 1; number <= recipe.revisions; ++number) {
            const std::string revision = std::to_string(number);
            if (isNamed(found, recipe.id, revision) || hasItsFigures(kitchen, {recipe.id, number}))
                continue;
            Error fault{ErrorCode::RevisionChanged};
            fault.file = kitchen.path();
            changed.push_back(fault.with("recipe", recipe.id).with("revision", revision));
        }
    return changed;
}

}  // namespace nettare
