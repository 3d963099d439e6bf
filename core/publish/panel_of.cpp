#include "core/publish/panel_of.h"

#include "core/publish/basis_text.h"

namespace nettare {

Result<Panel> usPanelOf(const Dossier& dossier, const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    if (!cooked.eaten.cooked) {
        Error error{ErrorCode::PanelNeedsCookedWeight};
        error.file = recipe.file;
        // Where the cook would add the weight.
        error.pointer = "/cooked";
        return fail(error);
    }
    const auto figures = figuresPer(Basis::Portion, dossier, cooked);
    if (!figures) return fail(figures.error());
    // A portion is the serving, and the batch is the container.
    UsPanelInput input;
    for (const Figure& figure : figures->figures) {
        OpenAmount& amount = input.perServing[indexOf(figure.component)];
        amount.atLeast = figure.atLeast;
        amount.atMost = figure.atMost;
        for (const std::size_t food : figure.missingFoods)
            amount.missingIn.push_back(dossier.foods[food].name);
    }
    // Both are known where the cooked weight is.
    input.servings = *portionsOf(dossier, cooked);
    input.household = portionText(recipe);
    input.servingGrams = *portionGrams(dossier, cooked);
    auto panel = usPanel(input);
    if (panel) return panel;
    Error error = panel.error();
    error.file = recipe.file;
    return fail(error);
}

}  // namespace nettare
