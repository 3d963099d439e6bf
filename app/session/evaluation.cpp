#include "app/session/evaluation.h"

#include "core/recipe/read_recipe.h"

namespace nettare {

namespace {

/// Compositions follow from foods and assumptions, in the order of the dossier's foods.
bool sameFoods(const Dossier& one, const Dossier& other) {
    if (!(one.main().assumptions == other.main().assumptions)) return false;
    if (one.foods.size() != other.foods.size()) return false;
    for (std::size_t i = 0; i < one.foods.size(); ++i)
        if (one.foods[i].identity != other.foods[i].identity) return false;
    return true;
}

Result<Cooked> cookedWith(const Dossier& dossier, const Evaluation* before, Meaning meaning) {
    if (before != nullptr && sameFoods(before->dossier, dossier))
        return cook(dossier, before->cooked.compositions, meaning);
    return cook(dossier, meaning);
}

/// Figures of all bases and the verdicts on the targets, of what was cooked.
Result<std::shared_ptr<const Evaluation>> evaluationOf(RecipeDocument document, Dossier dossier,
                                                       Cooked cooked) {
    auto evaluation = std::make_shared<Evaluation>(
        Evaluation{std::move(document), std::move(dossier), std::move(cooked), {}, {}});
    for (const Basis basis : {Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch}) {
        auto figures = figuresPer(basis, evaluation->dossier, evaluation->cooked);
        if (figures)
            evaluation->figures[static_cast<std::size_t>(basis)] = std::move(*figures);
        else if (figures.error().code != ErrorCode::CookedWeightMissing)
            return fail(figures.error());
    }
    auto verdicts = verdictsOf(evaluation->dossier, evaluation->cooked);
    if (verdicts) evaluation->verdicts = std::move(*verdicts);
    return evaluation;
}

}  // namespace

Result<std::shared_ptr<const Evaluation>> evaluated(const Json& document, const Closure& closure,
                                                    const Evaluation* before, Meaning meaning) {
    auto read = readRecipe(document);
    if (!read) return fail(read.error());
    LoadedRecipe loaded{{}, std::move(*read)};
    auto dossier = dossierOf(loaded, closure);
    if (!dossier) return fail(dossier.error());
    auto cooked = cookedWith(*dossier, before, meaning);
    if (!cooked) return fail(cooked.error());
    return evaluationOf(std::move(loaded.document), std::move(*dossier), std::move(*cooked));
}

Result<std::shared_ptr<const Evaluation>> withMeaning(std::shared_ptr<const Evaluation> evaluation,
                                                      Meaning meaning) {
    if (evaluation->cooked.meaning == meaning) return evaluation;
    auto cooked = cook(evaluation->dossier, evaluation->cooked.compositions, meaning);
    if (!cooked) return fail(cooked.error());
    return evaluationOf(evaluation->document, evaluation->dossier, std::move(*cooked));
}

}  // namespace nettare
