#include "core/nutrition/line_counting.h"

#include <cmath>

#include "core/nutrition/line_context.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

constexpr std::int64_t kPinchesPerTeaspoon = 16;

/// Portions of the batch; of a portion in grams to a thousandth, nothing where the dish was not
/// weighed.
std::optional<Fraction> portionsIn(const Dossier& dossier, const Recipe& recipe) {
    if (recipe.portionPieces) return recipe.pieces.exact().dividedBy(recipe.portionPieces->exact());
    if (recipe.cooked.empty()) return std::nullopt;
    LinearForm cooked = weighed(dossier, recipe.cooked);
    cooked.add(weighed(dossier, recipe.notEaten), -1);
    const double portions = cooked.value() / recipe.portionGrams->value();
    if (!(portions > 0.001 && portions < 1e9)) return std::nullopt;
    return Fraction::make(std::llround(portions * 1000), 1000);
}

}  // namespace

std::string_view reasonOf(LineCounting counting) {
    switch (counting) {
        case LineCounting::Counted:
            return {};
        case LineCounting::Between:
            return "optional, between none and all";
        case LineCounting::ToTaste:
            return "to taste";
        case LineCounting::NoPinch:
            return "to taste, no measure says what a pinch weighs";
        case LineCounting::Optional:
            return "optional";
    }
    return {};
}

std::optional<OpenWay> pinchWay(const Dossier& dossier, std::size_t recipeIndex,
                                std::size_t lineIndex) {
    const Recipe& recipe = dossier.recipes[recipeIndex];
    const auto portions = portionsIn(dossier, recipe);
    const auto share = Fraction::make(1, kPinchesPerTeaspoon);
    const auto spoons = portions && share ? portions->times(*share) : std::nullopt;
    if (!spoons) return std::nullopt;
    Line pinches = recipe.lines[lineIndex];
    pinches.toTaste = false;
    pinches.unit = findUnit("tsp", MeasureSystem::UsCustomary);
    pinches.amount = Amount{*spoons, *spoons, writeFraction(*spoons)};
    const std::size_t food = std::get<FoodIndex>(pinches.what).index;
    const LineContext context{dossier,
                              recipe,
                              pinches,
                              dossier.foods[food],
                              static_cast<std::uint32_t>(food),
                              numberOf(recipeIndex, lineIndex)};
    for (const auto way : {servingsWay, tableWay, statedDensityWay, measureDensityWay})
        if (auto open = way(context)) {
            open->spreadAssumed = true;
            open->grams.depend(rectangle({SourceKind::Pinch, 0, 0}, rectangular(1)),
                               open->grams.value());
            return open;
        }
    return std::nullopt;
}

LinearForm halfOf(const LinearForm& grams, std::uint32_t line) {
    LinearForm half = grams.times(0.5);
    return half.depend(rectangle({SourceKind::OptionalLine, 0, line}, rectangular(1)),
                       grams.value());
}

}  // namespace nettare
