#include "core/publish/comparison.h"

namespace nettare {

Result<Comparison> compared(const ComparedState& before, const ComparedState& after) {
    Comparison comparison;
    comparison.lines = comparedLines(before, after);
    comparison.gramsBefore = before.cooked.eaten.used.value();
    comparison.gramsAfter = after.cooked.eaten.used.value();
    const auto differencesPer = [&](Basis basis) -> Result<PerComponent<FigureDifference>> {
        const auto older = figuresPer(basis, before.dossier, before.cooked);
        if (!older) return fail(older.error());
        const auto newer = figuresPer(basis, after.dossier, after.cooked);
        if (!newer) return fail(newer.error());
        return comparedFigures(before, *older, after, *newer);
    };
    const auto batch = differencesPer(Basis::Batch);
    if (!batch) return fail(batch.error());
    comparison.batchEnergy = (*batch)[indexOf(Component::ENERC_KCAL)];
    auto figures = differencesPer(Basis::Portion);
    if (!figures) {
        comparison.basis = Basis::Piece;
        figures = differencesPer(Basis::Piece);
        if (!figures) return fail(figures.error());
    }
    comparison.figures = std::move(*figures);
    auto targets = comparedTargets(before, after);
    if (!targets) return fail(targets.error());
    comparison.targets = std::move(*targets);
    comparison.method = comparedMethod(before.document.steps, after.document.steps);
    return comparison;
}

}  // namespace nettare
