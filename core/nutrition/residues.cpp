#include "core/nutrition/residues.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/nutrition/test_cooks.h"
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

/// What of a line was in the mixture.
LinearForm inMixture(const Residue& residue, std::size_t line, const LineReport& report) {
    const auto share = std::ranges::find(residue.shares, line, &Residue::Share::line);
    return share == residue.shares.end() ? report.eaten : report.asUsed.times(share->share);
}

/// Rounding of doubles leaves a rest where a line is left over as a whole; it is nothing.
void clearRest(LineReport& line) {
    if (std::fabs(line.eaten.value()) < 1e-9 * line.asUsed.value())
        line.eaten.add(LinearForm{-line.eaten.value()});
}

/// Each line of the mixture loses the share residue / mixture of what of it was in.
std::optional<Error> takeMixture(const Dossier& dossier, const Recipe& recipe, std::size_t index,
                                 const LinearForm& left, std::vector<LineReport>& lines,
                                 std::vector<ResidueTaking>* takings) {
    const Residue& residue = recipe.residues[index];
    LinearForm mixture;
    for (const std::size_t line : canonicalOrder(dossier, recipe, lines, residue.lines))
        mixture.add(inMixture(residue, line, lines[line]));
    if (left.value() > mixture.value() * (1 + 1e-12))
        return tooLarge(recipe, residue, left.value(), mixture.value());
    if (mixture.value() <= 0) return std::nullopt;
    const LinearForm share = left.dividedBy(mixture);
    for (const std::size_t i : residue.lines) {
        LineReport& line = lines[i];
        const LinearForm in = inMixture(residue, i, line);
        const LinearForm taken = in.times(share);
        line.eaten.add(taken, -1);
        if (takings != nullptr) takings->push_back({index, i, in.value(), mixture.value(), taken});
        clearRest(line);
        if (line.eaten.value() < 0)
            return tooLarge(recipe, residue, line.asUsed.value() - line.eaten.value(),
                            line.asUsed.value());
    }
    return std::nullopt;
}

double gramsUsed(const std::vector<LineReport>& lines) {
    double grams = 0;
    for (const LineReport& line : lines) grams += line.asUsed.value();
    return grams;
}

/// Foods that the lines are made of, those of kept recipes among them; of what is there of them.
std::vector<std::size_t> foodsOf(const Recipe& recipe, const std::vector<Eaten>& kept,
                                 const std::vector<LineReport>& lines) {
    std::vector<std::size_t> foods;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i].eaten.value() <= 0) continue;
        if (const auto* food = std::get_if<FoodIndex>(&recipe.lines[i].what)) {
            foods.push_back(food->index);
            continue;
        }
        for (const Leaf& leaf : kept[i].leaves)
            if (!leaf.drip && leaf.grams.value() > 0) foods.push_back(leaf.food);
    }
    return foods;
}

}  // namespace

LinearForm leftOver(const Dossier& dossier, const Residue& residue, std::uint32_t number,
                    Meaning meaning) {
    std::vector<LinearForm> others;
    for (const OtherCook& cook : residue.otherCooks)
        others.push_back(weighed(dossier, cook.readings));
    return weightOverCooks(weighed(dossier, residue.readings), others,
                           {SourceKind::ResidueMean, 0, number}, meaning);
}

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

std::optional<Error> takeResidues(const Dossier& dossier, std::size_t recipeIndex, Meaning meaning,
                                  const std::vector<Eaten>& kept, std::vector<LineReport>& lines,
                                  Eaten& eaten, std::vector<ResidueTaking>* takings) {
    const Recipe& recipe = dossier.recipes[recipeIndex];
    for (std::size_t i = 0; i < recipe.residues.size(); ++i) {
        const Residue& residue = recipe.residues[i];
        const std::uint32_t number = numberOf(recipeIndex, i);
        const LinearForm left = leftOver(dossier, residue, number, meaning);
        switch (residue.kind) {
            case ResidueKind::Line:
            case ResidueKind::Mixture:
                if (auto error = takeMixture(dossier, recipe, i, left, lines, takings))
                    return error;
                break;
            case ResidueKind::Drip:
                eaten.leaves.push_back(
                    {*residue.food, left.times(-1), "drip " + std::to_string(i), number});
                break;
            case ResidueKind::Unknown:
                eaten.unknown.push_back({left, foodsOf(recipe, kept, lines), number});
                break;
            case ResidueKind::Water:
                eaten.pouredOff.add(left);
                break;
            case ResidueKind::NotEaten:
                eaten.carriesNothing.add(left);
                break;
        }
    }
    return std::nullopt;
}

Error nothingEaten(const Recipe& recipe, const std::vector<LineReport>& lines, const Eaten& eaten) {
    const double there = gramsUsed(lines);
    const double left = there - eaten.used.value();
    return tooLarge(recipe, recipe.residues.back(), left, there);
}

}  // namespace nettare
