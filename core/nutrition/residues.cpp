#include "core/nutrition/residues.h"

#include <algorithm>
#include <tuple>

#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

/// What a line is made of, whatever it is called: food identity, or the file of a kept recipe.
const std::string& identityOf(const Dossier& dossier, const Line& line) {
    if (const auto* food = std::get_if<FoodIndex>(&line.what))
        return dossier.foods[food->index].identity;
    return dossier.recipes[std::get<RecipeIndex>(line.what).index].file;
}

/// More left over than there was: a slip of a reading, or a line that is missing.
Error tooLarge(const Recipe& recipe, const Residue& residue, double left, double there) {
    Error error{ErrorCode::ResidueTooLarge};
    error.file = recipe.file;
    error.pointer = residue.pointer;
    return error.with("left", roundedToStep(Decimal::fromDouble(left), {1, -1}).text())
        .with("there", roundedToStep(Decimal::fromDouble(there), {1, -1}).text());
}

/// Each line of the mixture loses the share residue / mixture as it was mixed.
std::optional<Error> takeMixture(const Dossier& dossier, const Recipe& recipe,
                                 const Residue& residue, const LinearForm& left,
                                 std::vector<LineReport>& lines) {
    LinearForm mixture;
    for (const std::size_t line : canonicalOrder(dossier, recipe, lines, residue.lines))
        mixture.add(lines[line].asUsed);
    if (left.value() > mixture.value())
        return tooLarge(recipe, residue, left.value(), mixture.value());
    const LinearForm share = left.dividedBy(mixture);
    for (const std::size_t line : residue.lines)
        lines[line].eaten.add(lines[line].asUsed.times(share), -1);
    return std::nullopt;
}

double gramsUsed(const std::vector<LineReport>& lines) {
    double grams = 0;
    for (const LineReport& line : lines) grams += line.asUsed.value();
    return grams;
}

/// Foods that a recipe is made of, those of the kept recipes it uses among them.
void addFoodsOf(const Dossier& dossier, std::size_t recipe, std::vector<std::size_t>& foods) {
    for (const Line& line : dossier.recipes[recipe].lines)
        if (const auto* food = std::get_if<FoodIndex>(&line.what))
            foods.push_back(food->index);
        else
            addFoodsOf(dossier, std::get<RecipeIndex>(line.what).index, foods);
}

}  // namespace

std::vector<std::size_t> canonicalOrder(const Dossier& dossier, const Recipe& recipe,
                                        const std::vector<LineReport>& lines,
                                        std::vector<std::size_t> which) {
    std::ranges::sort(which, {}, [&](std::size_t i) {
        const Line& line = recipe.lines[i];
        return std::tuple<const std::string&, double, const std::string&>{
            identityOf(dossier, line), lines[i].asUsed.value(), line.id};
    });
    return which;
}

std::optional<Error> takeResidues(const Dossier& dossier, std::size_t recipeIndex,
                                  std::vector<LineReport>& lines, Eaten& eaten) {
    const Recipe& recipe = dossier.recipes[recipeIndex];
    for (std::size_t i = 0; i < recipe.residues.size(); ++i) {
        const Residue& residue = recipe.residues[i];
        const LinearForm left = weighed(dossier, residue.readings);
        switch (residue.kind) {
            case ResidueKind::Line:
            case ResidueKind::Mixture:
                if (auto error = takeMixture(dossier, recipe, residue, left, lines)) return error;
                break;
            case ResidueKind::Drip:
                eaten.leaves.push_back(
                    {*residue.food, left.times(-1), "drip " + std::to_string(i)});
                break;
            case ResidueKind::Unknown:
                eaten.unknown.push_back({left, {}, numberOf(recipeIndex, i)});
                addFoodsOf(dossier, recipeIndex, eaten.unknown.back().foods);
                break;
        }
    }
    for (const LineReport& line : lines)
        if (line.eaten.value() < -1e-9 * line.asUsed.value())
            return tooLarge(recipe, recipe.residues.front(),
                            line.asUsed.value() - line.eaten.value(), line.asUsed.value());
    return std::nullopt;
}

Error nothingEaten(const Recipe& recipe, const std::vector<LineReport>& lines, const Eaten& eaten) {
    const double there = gramsUsed(lines);
    const double left = there - eaten.used.value();
    return tooLarge(recipe, recipe.residues.back(), left, there);
}

}  // namespace nettare
