#include "app/command_line/kitchen_recipes.h"

#include "app/kitchen/draft_document.h"
#include "app/loading/closure.h"
#include "app/loading/kept_reference.h"

namespace nettare {

namespace {

Error inRecipe(const std::string& name, Error error) {
    if (error.file.empty()) error.file = name;
    return error;
}

Result<OpenedRecipe> openDraft(const Kitchen& kitchen, DossierLoader& loader,
                               const std::string& recipe) {
    const auto draft = kitchen.draft(recipe);
    if (!draft) return fail(draft.error());
    const auto document = documentOf(*draft);
    if (!document) return fail(inRecipe(recipe, document.error()));
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto closure = closureOfDraft(kitchen, *document, **tables);
    if (!closure) return fail(inRecipe(recipe, closure.error()));
    auto dossier = dossierOf(*document, recipe, *closure);
    if (!dossier) return fail(dossier.error());
    return opened(std::move(*dossier));
}

}  // namespace

Result<OpenedRecipe> openRevision(const Kitchen& kitchen, const KeptReference& reference) {
    const auto kept = kitchen.revision(reference.recipe, reference.revision);
    if (!kept) return fail(kept.error());
    const auto closure = closureOfRevision(kitchen, *kept);
    if (!closure) return fail(inRecipe(reference.text(), closure.error()));
    auto dossier = dossierOf(kept->document, reference.text(), *closure);
    if (!dossier) return fail(dossier.error());
    auto recipe = opened(std::move(*dossier));
    if (recipe) recipe->kept = KeptFigures{kept->figures, kept->arithmetic};
    return recipe;
}

OpenRecipe recipesOf(const Kitchen& kitchen, DossierLoader& loader, std::optional<int> revision) {
    return [&kitchen, &loader, revision](const std::string& name) -> Result<OpenedRecipe> {
        const auto recipe = kitchen.recipeNamed(name);
        if (!recipe) return fail(recipe.error());
        return revision ? openRevision(kitchen, {*recipe, *revision})
                        : openDraft(kitchen, loader, *recipe);
    };
}

}  // namespace nettare
