#include "core/nutrition/leaves.h"

#include <algorithm>
#include <tuple>

#include "core/nutrition/residues.h"
#include "core/nutrition/weigh.h"
#include "core/nutrition/written_amount.h"

namespace nettare {

namespace {

/// Sum of everything eaten, in canonical order.
LinearForm sumOf(const Eaten& eaten) {
    LinearForm sum;
    for (const Leaf& leaf : eaten.leaves) sum.add(leaf.grams);
    for (const UnknownResidue& residue : eaten.unknown) sum.add(residue.grams, -1);
    return sum;
}

/// Grams of a line that uses a kept recipe, by its pieces or by weight.
Result<LinearForm> gramsOfKept(const Dossier& dossier, std::size_t outerIndex, std::size_t index,
                               const Recipe& kept, const Eaten& inner) {
    const Recipe& outer = dossier.recipes[outerIndex];
    const Line& line = outer.lines[index];
    const auto number = numberOf(outerIndex, index);
    const LinearForm whole = inner.cooked.value_or(inner.used);
    if (!line.weighed.empty()) return weighed(dossier, line.weighed).times(line.weighedFactor);
    if (line.unit != nullptr && line.unit->kind == UnitKind::Mass)
        return writtenGrams(line, number);
    if (line.piece == kept.pieceWord || line.piece == kept.piecesWord)
        return whole.times(amountOf(line, number)).times(1 / kept.pieces.value());
    if (line.piece == "batch") return whole.times(amountOf(line, number));
    Error error{ErrorCode::NoWayToGrams};
    error.file = outer.file;
    error.pointer = line.pointer;
    return fail(
        error.with("line", line.id)
            .with("food", line.name)
            .with("unit", line.unit != nullptr ? line.unit->symbol : std::string_view{line.piece}));
}

/// The kept recipe's leaves, scaled to the share of it that this line uses.
void flatten(const Line& line, const LinearForm& grams, const Eaten& inner, Eaten& eaten) {
    const LinearForm share = grams.dividedBy(inner.cooked.value_or(inner.used));
    for (const Leaf& leaf : inner.leaves)
        eaten.leaves.push_back({leaf.food, leaf.grams.times(share), line.id + "/" + leaf.path});
    for (const UnknownResidue& residue : inner.unknown)
        eaten.unknown.push_back({residue.grams.times(share), residue.foods, residue.number});
}

/// The finished dish less bones, shells and sticks that were weighed with it. A dish that is all
/// sticks is a slip.
std::optional<Error> addCooked(const Dossier& dossier, const Recipe& recipe, Eaten& eaten) {
    if (recipe.cooked.empty()) return std::nullopt;
    LinearForm cooked = weighed(dossier, recipe.cooked);
    cooked.add(weighed(dossier, recipe.notEaten), -1);
    if (cooked.value() <= 0) {
        Error error{ErrorCode::NotEatenTooLarge};
        error.file = recipe.file;
        error.pointer = "/cooked";
        return error;
    }
    eaten.cooked = cooked;
    return std::nullopt;
}

/// A line of no weight would make shares of nothing, and NaN of them.
Error weighsNothing(const Recipe& recipe, const Line& line) {
    Error error{ErrorCode::LineWeighsNothing};
    error.file = recipe.file;
    error.pointer = line.pointer;
    return error.with("line", line.id).with("food", line.name);
}

/// Grams of every line as used; what kept recipes hold goes into `kept`, by line.
Result<std::vector<Eaten>> findGrams(const Dossier& dossier, std::size_t index,
                                     std::vector<LineReport>& report) {
    const Recipe& recipe = dossier.recipes[index];
    report.assign(recipe.lines.size(), {});
    std::vector<Eaten> kept(recipe.lines.size());
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        const Line& line = recipe.lines[i];
        if (const auto* inner = std::get_if<RecipeIndex>(&line.what)) {
            std::vector<LineReport> innerReport;
            auto eaten = eatenOf(dossier, inner->index, innerReport);
            if (!eaten) return fail(eaten.error());
            kept[i] = std::move(*eaten);
            const auto grams =
                gramsOfKept(dossier, index, i, dossier.recipes[inner->index], kept[i]);
            if (!grams) return fail(grams.error());
            report[i].asUsed = *grams;
        } else {
            auto ways = waysToGrams(dossier, index, i);
            if (!ways) return fail(ways.error());
            report[i].ways = std::move(*ways);
            report[i].asUsed = report[i].ways.way().grams;
        }
        if (report[i].asUsed.value() <= 0) return fail(weighsNothing(recipe, line));
        report[i].eaten = report[i].asUsed;
    }
    return kept;
}

}  // namespace

// Residues are taken before kept recipes are flattened: a sauce left in the bowl is left as a
// whole.
Result<Eaten> eatenOf(const Dossier& dossier, std::size_t index, std::vector<LineReport>& report) {
    const Recipe& recipe = dossier.recipes[index];
    const auto kept = findGrams(dossier, index, report);
    if (!kept) return fail(kept.error());
    Eaten eaten;
    if (const auto error = takeResidues(dossier, index, report, eaten)) return fail(*error);
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        const Line& line = recipe.lines[i];
        if (const auto* food = std::get_if<FoodIndex>(&line.what))
            eaten.leaves.push_back({food->index, report[i].eaten, line.id});
        else
            flatten(line, report[i].eaten, (*kept)[i], eaten);
    }
    std::ranges::sort(eaten.leaves, {}, [&](const Leaf& leaf) {
        return std::tuple<const std::string&, double, const std::string&>{
            dossier.foods[leaf.food].identity, leaf.grams.value(), leaf.path};
    });
    eaten.used = sumOf(eaten);
    if (eaten.used.value() <= 0) return fail(nothingEaten(recipe, report, eaten));
    if (const auto error = addCooked(dossier, recipe, eaten)) return fail(*error);
    return eaten;
}

}  // namespace nettare
