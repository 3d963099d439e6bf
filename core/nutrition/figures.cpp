#include "core/nutrition/figures.h"

#include <algorithm>
#include <cmath>

#include "core/nutrition/block_parts.h"
#include "core/nutrition/piece_share.h"
#include "core/nutrition/pieces.h"
#include "core/nutrition/student_t.h"

namespace nettare {

namespace {

/// Bounds stay apart from u: a missing part is not uncertain by some spread, it is simply not
/// known. Where more water went than the known parts held, a missing part gave the rest.
Figure figureOf(Component component, const Block& block, const Uncertainty& uncertainty) {
    const std::size_t k = indexOf(component);
    Figure figure;
    figure.component = component;
    figure.value = std::max(0.0, block.known[k]);
    figure.u = uncertainty.u;
    figure.freedom = uncertainty.freedom;
    figure.atLeast = std::max(0.0, block.known[k] + block.missingLow[k]);
    if (!block.unbounded[k]) figure.atMost = std::max(0.0, block.known[k] + block.missingHigh[k]);
    figure.missingFoods = block.missingFoods[k];
    if (figure.missingFoods.empty()) {
        figure.atLeast = figure.value;
        figure.atMost = figure.value;
    } else if (block.totalGrams > 0) {
        figure.knownShare = std::max(0.0, 1 - block.missingGrams[k] / block.totalGrams);
    }
    return figure;
}

Error cookedWeightMissing(const Recipe& recipe) {
    Error error{ErrorCode::CookedWeightMissing};
    error.file = recipe.file;
    error.pointer = "/portion/grams";
    return error;
}

/// Batch per so many pieces; of any pieces their share of the batch scatters.
Result<Block> perPieces(double pieces, const Dossier& dossier, const Cooked& cooked) {
    Block block = perWeight(cooked.batch, pieces, piecesOf(dossier, 0));
    if (cooked.meaning != Meaning::AnyPiece) return block;
    auto share = pieceShare(dossier);
    if (!share) return fail(share.error());
    const double each = 1 / std::sqrt(pieces);
    double* row = block.row(*share);
    for (std::size_t k = 0; k < kComponentCount; ++k) row[k] += block.known[k] * each;
    return block;
}

/// Pieces are exact, or a range; grams divide by a weight that is itself uncertain.
Result<Block> blockPer(Basis basis, const Dossier& dossier, const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    switch (basis) {
        case Basis::Batch:
            return cooked.batch;
        case Basis::Piece:
            return perPieces(1, dossier, cooked);
        case Basis::Portion:
            if (recipe.portionPieces)
                return perPieces(recipe.portionPieces->value(), dossier, cooked);
            if (!cooked.eaten.cooked) return fail(cookedWeightMissing(recipe));
            return perWeight(cooked.batch, recipe.portionGrams->value(), *cooked.eaten.cooked);
        case Basis::Hundred:
            return perWeight(cooked.batch, 100, cooked.eaten.cooked.value_or(cooked.eaten.used));
    }
    return cooked.batch;
}

}  // namespace

// The half-width goes outside the bounds: the known parts may be off and the missing ones at their
// end.
FigureInterval intervalOf(const Figure& figure) {
    const double half = figure.u == 0 ? 0 : coverageFactor(figure.freedom) * figure.u;
    FigureInterval interval{std::max(0.0, figure.atLeast - half), {}, half};
    if (figure.atMost) interval.high = *figure.atMost + half;
    return interval;
}

Result<Cooked> cook(const Dossier& dossier, Meaning meaning) {
    auto compositions = compositionsOf(dossier);
    if (!compositions) return fail(compositions.error());
    return cook(dossier, std::move(*compositions), meaning);
}

Result<Cooked> cook(const Dossier& dossier, std::vector<Composition> compositions,
                    Meaning meaning) {
    Cooked cooked;
    cooked.meaning = meaning;
    cooked.compositions = std::move(compositions);
    auto eaten = eatenOf(dossier, 0, cooked.lines, meaning);
    if (!eaten) return fail(eaten.error());
    cooked.eaten = std::move(*eaten);
    cooked.batch = batchBlock(cooked.eaten, cooked.compositions);
    if (const auto error = overdrawn(dossier, cooked.batch, cooked.eaten, cooked.compositions))
        return fail(*error);
    takeWater(cooked.batch, cooked.eaten);
    cooked.batch.meaning = meaning;
    return cooked;
}

Result<Figures> figuresPer(Basis basis, const Dossier& dossier, const Cooked& cooked) {
    Figures figures;
    figures.basis = basis;
    figures.beforeCooking = basis == Basis::Hundred && !cooked.eaten.cooked;
    auto block = blockPer(basis, dossier, cooked);
    if (!block) return fail(block.error());
    figures.block = std::move(*block);
    const auto budget = budgetOf(figures.block, cooked.compositions);
    for (const ComponentFacts& facts : allComponents())
        figures.figures[indexOf(facts.component)] =
            figureOf(facts.component, figures.block, budget[indexOf(facts.component)]);
    return figures;
}

std::optional<double> portionGrams(const Dossier& dossier, const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    if (recipe.portionGrams) return recipe.portionGrams->value();
    if (!cooked.eaten.cooked) return std::nullopt;
    return cooked.eaten.cooked->value() * recipe.portionPieces->value() / recipe.pieces.value();
}

std::optional<double> portionsOf(const Dossier& dossier, const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    if (recipe.portionPieces) return recipe.pieces / *recipe.portionPieces;
    if (!cooked.eaten.cooked) return std::nullopt;
    return cooked.eaten.cooked->value() / recipe.portionGrams->value();
}

}  // namespace nettare
