#include <fmt/core.h>

#include "core/nutrition/student_t.h"
#include "core/publish/left_out.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// Fat or juice that ran off, by its own food.
PathDraft dripDraft(const PathWork& work, std::size_t recipe, std::size_t index) {
    const Residue& residue = work.dossier.recipes[recipe].residues[index];
    PathDraft draft = contentDraft(work, *residue.food, leftOverDraft(work, recipe, index), true);
    draft.step.words = work.dossier.foods[*residue.food].name + " that ran off";
    return draft;
}

/// Cooked weight less what went in: water gained or lost.
PathDraft cookingDraft(PathWork& work, std::size_t recipe) {
    PathDraft draft = pathDraft(PathKind::Grams, std::string{work.facts.unit},
                                "what the dish lost or gained in cooking is water");
    draft.decimals = work.decimals();
    PathDraft cooked = cookedDraft(work, recipe);
    PathDraft used = usedDraft(work, recipe);
    PathFactor change{{{cooked.value, cooked.decimals, " g"}, {used.value, 1, " g", true}}};
    change.sum[0].below = 0;
    change.sum[1].below = 1;
    draft.rule = PathRule::Formula;
    draft.factors.push_back(std::move(change));
    draft.below.push_back(std::move(cooked));
    draft.below.push_back(std::move(used));
    return draft.computed();
}

PathDraft pouredDraft(const PathWork& work, std::size_t recipe, std::size_t index) {
    PathDraft draft = pathDraft(PathKind::Grams, std::string{work.facts.unit},
                                "cooking water that was poured off");
    draft.negative = true;
    draft.by(leftOverDraft(work, recipe, index), " g");
    return draft.computed();
}

void addCookingWater(PathWork& work, std::size_t recipe, PathDraft& sum) {
    const std::vector<Residue>& residues = work.dossier.recipes[recipe].residues;
    for (std::size_t i = 0; i < residues.size(); ++i)
        if (residues[i].kind == ResidueKind::Water) sum.add(pouredDraft(work, recipe, i));
    if (work.gramsOf(recipe).eaten.cooked) sum.add(cookingDraft(work, recipe));
}

double halfWidthOfBatch(PathWork& work, std::size_t recipe) {
    if (recipe == 0) {
        const Uncertainty all =
            budgetOf(work.cooked.batch, work.cooked.compositions)[indexOf(work.component)];
        return all.u == 0 ? 0 : coverageFactor(all.freedom) * all.u;
    }
    if (work.component == Component::WATER) return 0;
    LinearForm content;
    for (const Leaf& leaf : work.gramsOf(recipe).eaten.leaves) content.add(contentOf(work, leaf));
    return pathHalfWidth(content, work.meaning());
}

std::string batchWords(const PathWork& work, std::size_t recipe) {
    std::string words = "in the batch, all lines together";
    if (recipe != 0) return words;
    const std::string without =
        withoutText(uncountedLines(work.dossier, work.cooked, work.component));
    return without.empty() ? words : words + "; " + without;
}

}  // namespace

PathDraft batchDraft(PathWork& work, std::size_t recipe) {
    const Recipe& of = work.dossier.recipes[recipe];
    PathDraft sum =
        pathDraft(PathKind::Batch, std::string{work.facts.unit}, batchWords(work, recipe));
    sum.decimals = work.decimals();
    for (std::size_t i = 0; i < of.lines.size(); ++i)
        if (!isLeftOut(work.gramsOf(recipe).lines[i].counting)) sum.add(lineDraft(work, recipe, i));
    for (std::size_t i = 0; i < of.residues.size(); ++i)
        if (of.residues[i].kind == ResidueKind::Drip) sum.add(dripDraft(work, recipe, i));
    if (recipe == 0)
        for (PathDraft& residue : unknownDrafts(work)) sum.add(std::move(residue));
    if (work.component == Component::WATER) addCookingWater(work, recipe, sum);
    return sum.computed().within(halfWidthOfBatch(work, recipe), work.decimals());
}

}  // namespace nettare
