#include <fmt/core.h>

#include "core/publish/measure_text.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

const std::string& calledOr(const Residue& residue, const std::string& other) {
    return residue.called.empty() ? other : residue.called;
}

/// What one residue took of a line: of a mixture the share that the line was of it.
PathDraft takingDraft(const PathWork& work, std::size_t recipe, const ResidueTaking& taking) {
    static const std::string kLeft = "what was left over";
    static const std::string kMixture = "mixture";
    const Residue& residue = work.dossier.recipes[recipe].residues[taking.residue];
    PathDraft left = leftOverDraft(work, recipe, taking.residue);
    const bool alone = taking.inMixture == taking.mixture;
    PathDraft draft = pathDraft(PathKind::Grams, "g", {});
    draft.negative = true;
    if (alone) {
        draft.step.words = calledOr(residue, kLeft) + ", all of it this line";
        draft.by(std::move(left), " g");
    } else {
        draft.step.words =
            fmt::format("its share of the {} g of {} that stayed; it is {} of the mixture",
                        shortNumber(left.value), calledOr(residue, kMixture),
                        percent(taking.inMixture / taking.mixture));
        draft.by(pathNumber(taking.inMixture, " g"));
        draft.by(std::move(left), " g");
        draft.by(pathNumber(taking.mixture, " g"), true);
    }
    draft.computed().value = -taking.taken.value();
    draft.within(pathHalfWidth(taking.taken, work.meaning()), 1);
    draft.step.way = Way::Weighed;
    return draft;
}

}  // namespace

const RecipeGrams& PathWork::gramsOf(std::size_t recipe) {
    const auto found = grams_.find(recipe);
    if (found != grams_.end()) return found->second;
    RecipeGrams& grams = grams_[recipe];
    // It was found before, when all was cooked.
    auto eaten = eatenOf(dossier, recipe, grams.lines, cooked.meaning, &grams.takings);
    if (eaten) grams.eaten = std::move(*eaten);
    return grams;
}

PathDraft eatenDraft(PathWork& work, std::size_t recipe, std::size_t index) {
    const RecipeGrams& grams = work.gramsOf(recipe);
    const LineReport& report = grams.lines[index];
    PathDraft used = lineUsedDraft(work, recipe, index);
    std::vector<PathDraft> takings;
    for (const ResidueTaking& taking : grams.takings)
        if (taking.line == index) takings.push_back(takingDraft(work, recipe, taking));
    PathDraft eaten = std::move(used);
    if (!takings.empty()) {
        PathDraft sum = pathDraft(PathKind::Grams, "g", "eaten: as used, less what was left over");
        sum.step.way = eaten.step.way;
        sum.add(std::move(eaten));
        for (PathDraft& taking : takings) sum.add(std::move(taking));
        eaten = std::move(sum.computed());
    }
    if (report.counting == LineCounting::Between) {
        PathDraft half = pathDraft(PathKind::Grams, "g", "optional: between none and all, half");
        half.step.way = eaten.step.way;
        half.by(std::move(eaten), " g").by(pathNumber(2), true);
        eaten = std::move(half.computed());
    }
    eaten.value = report.eaten.value();
    eaten.step.plusMinus.clear();
    eaten.within(pathHalfWidth(report.eaten, work.meaning()), 1);
    return eaten;
}

PathDraft usedDraft(PathWork& work, std::size_t recipe) {
    const RecipeGrams& grams = work.gramsOf(recipe);
    const Recipe& of = work.dossier.recipes[recipe];
    PathDraft sum = pathDraft(PathKind::Grams, "g", "weight of all that is eaten of the lines");
    for (std::size_t i = 0; i < of.lines.size(); ++i) {
        if (isLeftOut(grams.lines[i].counting)) continue;
        PathDraft line = pathDraft(PathKind::Grams, "g", of.lines[i].name + ", eaten");
        line.value = grams.lines[i].eaten.value();
        sum.add(std::move(line));
    }
    const auto less = [&](std::size_t residue, std::string words) {
        PathDraft left = pathDraft(PathKind::Grams, "g", std::move(words));
        left.negative = true;
        left.by(leftOverDraft(work, recipe, residue), " g");
        sum.add(std::move(left.computed()));
    };
    for (std::size_t i = 0; i < of.residues.size(); ++i) {
        const ResidueKind kind = of.residues[i].kind;
        if (kind == ResidueKind::Line || kind == ResidueKind::Mixture) continue;
        less(i, kind == ResidueKind::Drip ? "what ran off" : "left over");
    }
    sum.computed().value = grams.eaten.used.value();
    return sum;
}

PathDraft wholeDraft(PathWork& work, std::size_t recipe) {
    return work.gramsOf(recipe).eaten.cooked ? cookedDraft(work, recipe) : usedDraft(work, recipe);
}

}  // namespace nettare
