#include "app/kitchen/moved_figures.h"

#include <algorithm>

#include "app/loading/closure.h"
#include "core/food/own_food.h"
#include "core/food/table_food_json.h"

namespace nettare {

namespace {

/// The content of a food as another row of the same food has it.
TableFood inPlaceOf(const TableFood& before, const TableFood& next) {
    TableFood food = next;
    food.row = before.row;
    return food;
}

bool isOtherVersion(const TableFood& food, const std::string& id, const TableFood& next) {
    return isOwn(food.row) && food.row.number == id &&
           foodVersion(food) != foodVersion(inPlaceOf(food, next));
}

bool usesOtherVersion(const std::vector<PinnedFood>& foods, const std::string& id,
                      const TableFood& next) {
    return std::ranges::any_of(
        foods, [&](const PinnedFood& pinned) { return isOtherVersion(pinned.food, id, next); });
}

Result<std::vector<MovedFigure>> movedIn(const Json& document, Closure closure,
                                         const std::string& id, const TableFood& next,
                                         MovedRevision& moved) {
    const auto before = dossierOf(document, "", closure);
    if (!before) return fail(before.error());
    for (TableFood& food : closure.foods)
        if (isOtherVersion(food, id, next)) food = inPlaceOf(food, next);
    const auto after = dossierOf(document, "", closure);
    if (!after) return fail(after.error());
    auto figures = movedFigures(*before, *after);
    if (!figures) return figures;
    for (const MovedFigure& figure : *figures)
        moved.places.push_back(placeText(figure, before->main()));
    return figures;
}

}  // namespace

Result<std::vector<MovedRevision>> figuresMovedBy(const Kitchen& kitchen, const std::string& id,
                                                  const TableFood& next) {
    const auto recipes = kitchen.recipes();
    if (!recipes) return fail(recipes.error());
    std::vector<MovedRevision> all;
    for (const ShelvedRecipe& recipe : *recipes) {
        if (recipe.revisions == 0) continue;
        const auto kept = kitchen.stored(recipe.id, recipe.revisions);
        if (!kept) return fail(kept.error());
        if (!usesOtherVersion(kept->foods, id, next)) continue;
        auto closure = closureOfRevision(kitchen, kept->document, kept->foods);
        if (!closure) return fail(closure.error());
        MovedRevision moved{recipe.id, recipe.title, recipe.revisions, {}, {}, {}};
        auto figures = movedIn(kept->document, std::move(*closure), id, next, moved);
        if (figures)
            moved.figures = std::move(*figures);
        else
            moved.failure = figures.error();
        if (moved.failure || !moved.figures.empty()) all.push_back(std::move(moved));
    }
    return all;
}

}  // namespace nettare
