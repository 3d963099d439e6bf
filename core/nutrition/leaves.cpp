#include "core/nutrition/leaves.h"

#include <algorithm>
#include <tuple>

#include "core/nutrition/pieces.h"
#include "core/nutrition/residues.h"
#include "core/nutrition/test_cooks.h"
#include "core/nutrition/weigh.h"
#include "core/nutrition/written_amount.h"

namespace nettare {

namespace {

/// Sum of everything eaten, in canonical order.
LinearForm sumOf(const Eaten& eaten) {
    LinearForm sum;
    for (const Leaf& leaf : eaten.leaves) sum.add(leaf.grams);
    for (const UnknownResidue& residue : eaten.unknown) sum.add(residue.grams, -1);
    return sum.add(eaten.pouredOff, -1).add(eaten.carriesNothing, -1).add(eaten.keptChange);
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
        return whole.times(amountOf(line, number))
            .dividedBy(piecesOf(dossier, std::get<RecipeIndex>(line.what).index));
    if (line.piece == "batch") return whole.times(amountOf(line, number));
    Error error{ErrorCode::NoWayToGrams};
    error.file = outer.file;
    error.pointer = line.pointer;
    return fail(
        error.with("line", line.id)
            .with("food", line.name)
            .with("unit", line.unit != nullptr ? line.unit->symbol : std::string_view{line.piece}));
}

/// The kept recipe's leaves, scaled to the share of it that this line uses, with its residues and
/// what it lost in its own cooking.
void flatten(const Line& line, const LinearForm& grams, const Eaten& inner, Eaten& eaten) {
    const LinearForm share = grams.dividedBy(inner.cooked.value_or(inner.used));
    for (const Leaf& leaf : inner.leaves)
        eaten.leaves.push_back(
            {leaf.food, leaf.grams.times(share), line.id + "/" + leaf.path, leaf.drip});
    for (const UnknownResidue& residue : inner.unknown)
        eaten.unknown.push_back({residue.grams.times(share), residue.foods, residue.number});
    eaten.pouredOff.add(inner.pouredOff.times(share));
    eaten.carriesNothing.add(inner.carriesNothing.times(share));
    eaten.keptChange.add(inner.keptChange.times(share));
    if (!inner.cooked) return;
    LinearForm change = *inner.cooked;
    eaten.keptChange.add(change.add(inner.used, -1).times(share));
}

/// The amount that a cook only tries.
void tryAmount(const Line& line, LineReport& report) {
    if (line.tried == 1) return;
    report.added = report.asUsed.times(line.tried - 1);
    report.asUsed = line.tried == 0 ? LinearForm{} : report.asUsed.times(line.tried);
}

/// The finished dish less bones, shells and sticks that were weighed with it, and with what tried
/// amounts add. A dish that is all sticks is a slip.
std::optional<Error> addCooked(const Dossier& dossier, std::size_t index, Meaning meaning,
                               const std::vector<LineReport>& report, Eaten& eaten) {
    const Recipe& recipe = dossier.recipes[index];
    if (recipe.cooked.empty()) return std::nullopt;
    const auto eatenOfCook = [&](const std::vector<std::size_t>& readings,
                                 const std::vector<std::size_t>& notEaten) {
        return weighed(dossier, readings).add(weighed(dossier, notEaten), -1);
    };
    std::vector<LinearForm> others;
    for (const OtherCook& cook : recipe.otherCooks)
        others.push_back(eatenOfCook(cook.readings, cook.notEaten));
    LinearForm cooked =
        weightOverCooks(eatenOfCook(recipe.cooked, recipe.notEaten), others,
                        {SourceKind::CookedMean, static_cast<std::uint32_t>(index), 0}, meaning);
    for (const LineReport& line : report) cooked.add(line.added);
    if (cooked.value() <= 0) {
        Error error{ErrorCode::NotEatenTooLarge};
        error.file = recipe.file;
        error.pointer = "/cooked";
        return error;
    }
    eaten.cooked = std::move(cooked);
    return std::nullopt;
}

/// A line of no weight would make shares of nothing, and NaN of them.
Error weighsNothing(const Recipe& recipe, const Line& line) {
    Error error{ErrorCode::LineWeighsNothing};
    error.file = recipe.file;
    error.pointer = line.pointer;
    return error.with("line", line.id).with("food", line.name);
}

/// Grams of a line of a food, by the best way or by a pinch. A line that is left out needs none.
std::optional<Error> findGramsOfFood(const Dossier& dossier, std::size_t recipeIndex,
                                     std::size_t index, LineReport& report) {
    const Recipe& recipe = dossier.recipes[recipeIndex];
    const Line& line = recipe.lines[index];
    if (line.toTaste && line.weighed.empty() && !line.assumed) {
        const bool pinch = recipe.counting.toTaste == ToTasteRule::PinchAPortion;
        auto way = pinch ? pinchWay(dossier, recipeIndex, index) : std::nullopt;
        if (!isLeftOut(report.counting) && !way)
            report.counting = pinch ? LineCounting::NoPinch : LineCounting::ToTaste;
        if (!way) return std::nullopt;
        report.asUsed = way->grams;
        report.ways.ways.push_back(std::move(*way));
    } else {
        auto ways = waysToGrams(dossier, recipeIndex, index);
        if (!ways && ways.error().code == ErrorCode::NoWayToGrams && isLeftOut(report.counting))
            return std::nullopt;
        if (!ways) return ways.error();
        report.ways = std::move(*ways);
        report.asUsed = report.ways.way().grams;
    }
    if (report.asUsed.value() <= 0) return weighsNothing(recipe, line);
    tryAmount(line, report);
    return std::nullopt;
}

LineCounting countingOf(const Recipe& recipe, const Line& line) {
    if (!line.optional || recipe.counting.optional == OptionalRule::Counted)
        return LineCounting::Counted;
    return recipe.counting.optional == OptionalRule::LeftOut ? LineCounting::Optional
                                                             : LineCounting::Between;
}

/// Grams of every line as used, as if all counted; what kept recipes hold, by line.
Result<std::vector<Eaten>> findGrams(const Dossier& dossier, std::size_t index, Meaning meaning,
                                     std::vector<LineReport>& report) {
    const Recipe& recipe = dossier.recipes[index];
    report.assign(recipe.lines.size(), {});
    std::vector<Eaten> kept(recipe.lines.size());
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        const Line& line = recipe.lines[i];
        report[i].counting = countingOf(recipe, line);
        if (const auto* inner = std::get_if<RecipeIndex>(&line.what)) {
            std::vector<LineReport> innerReport;
            auto eaten = eatenOf(dossier, inner->index, innerReport, meaning);
            if (!eaten) return fail(eaten.error());
            kept[i] = std::move(*eaten);
            const auto grams =
                gramsOfKept(dossier, index, i, dossier.recipes[inner->index], kept[i]);
            if (!grams) return fail(grams.error());
            report[i].asUsed = *grams;
            if (report[i].asUsed.value() <= 0) return fail(weighsNothing(recipe, line));
            tryAmount(line, report[i]);
        } else if (const auto error = findGramsOfFood(dossier, index, i, report[i])) {
            return fail(*error);
        }
        report[i].eaten = report[i].asUsed;
    }
    return kept;
}

/// Neither left out nor tried with nothing.
bool isInDish(const Line& line, const LineReport& report) {
    return !isLeftOut(report.counting) && line.tried != 0;
}

void addOpen(const OpenLine& line, Eaten& eaten) {
    if (std::ranges::find(eaten.open, line) == eaten.open.end()) eaten.open.push_back(line);
}

/// What the recipe leaves open counts by its rules; residues were taken as if all counted, since
/// they were weighed so.
std::optional<Error> count(const Dossier& dossier, std::size_t index,
                           std::vector<LineReport>& report, Eaten& eaten) {
    for (std::size_t i = 0; i < report.size(); ++i) {
        LineReport& line = report[i];
        if (line.counting == LineCounting::Counted) continue;
        const std::uint32_t number = numberOf(index, i);
        addOpen({number, line.counting}, eaten);
        const bool half = line.counting == LineCounting::Between;
        line.asUsed = half ? halfOf(line.asUsed, number) : LinearForm{};
        line.eaten = half ? halfOf(line.eaten, number) : LinearForm{};
        line.added = half ? halfOf(line.added, number) : LinearForm{};
    }
    const Recipe& recipe = dossier.recipes[index];
    for (std::size_t i = 0; i < report.size(); ++i)
        if (isInDish(recipe.lines[i], report[i])) return std::nullopt;
    Error error{ErrorCode::NothingCounted};
    error.file = recipe.file;
    return error.at("/lines");
}

/// The lines that count as leaves; kept recipes in canonical order, since their weights of water
/// add up.
void addLeaves(const Dossier& dossier, const Recipe& recipe, const std::vector<LineReport>& report,
               const std::vector<Eaten>& kept, Eaten& eaten) {
    std::vector<std::size_t> keptLines;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        if (!isInDish(recipe.lines[i], report[i])) continue;
        if (const auto* food = std::get_if<FoodIndex>(&recipe.lines[i].what))
            eaten.leaves.push_back({food->index, report[i].eaten, recipe.lines[i].id});
        else
            keptLines.push_back(i);
    }
    for (const std::size_t i : canonicalOrder(dossier, recipe, report, std::move(keptLines))) {
        flatten(recipe.lines[i], report[i].eaten, kept[i], eaten);
        for (const OpenLine& line : kept[i].open) addOpen(line, eaten);
    }
    std::ranges::sort(eaten.leaves, {}, [&](const Leaf& leaf) {
        return std::tuple<const std::string&, double, const std::string&>{
            dossier.foods[leaf.food].identity, leaf.grams.value(), leaf.path};
    });
}

}  // namespace

// Residues are taken before kept recipes are flattened: a sauce left in the bowl is left as a
// whole.
Result<Eaten> eatenOf(const Dossier& dossier, std::size_t index, std::vector<LineReport>& report,
                      Meaning meaning, std::vector<ResidueTaking>* takings) {
    const Recipe& recipe = dossier.recipes[index];
    const auto kept = findGrams(dossier, index, meaning, report);
    if (!kept) return fail(kept.error());
    Eaten eaten;
    if (const auto error = takeResidues(dossier, index, meaning, *kept, report, eaten, takings))
        return fail(*error);
    if (const auto error = count(dossier, index, report, eaten)) return fail(*error);
    addLeaves(dossier, recipe, report, *kept, eaten);
    eaten.used = sumOf(eaten);
    if (eaten.used.value() <= 0) return fail(nothingEaten(recipe, report, eaten));
    if (const auto error = addCooked(dossier, index, meaning, report, eaten)) return fail(*error);
    return eaten;
}

}  // namespace nettare
