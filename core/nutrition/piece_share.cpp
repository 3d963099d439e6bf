#include "core/nutrition/piece_share.h"

#include "core/nutrition/weigh.h"

namespace nettare {

Result<Source> pieceShare(const Dossier& dossier) {
    const Recipe& recipe = dossier.main();
    const SourceKey key{SourceKind::PieceShare, 0, 0};
    if (!recipe.pieceSeries)
        return ownSource(key, recipe.assumptions.pieceSpread.value(),
                         recipe.assumptions.spreadFreedom.value());
    const auto pieces =
        statisticsOf(dossier, dossier.series[*recipe.pieceSeries], recipe.assumptions);
    if (!pieces) return fail(pieces.error());
    return ownSource(key, pieces->spread / pieces->mean, pieces->freedom);
}

}  // namespace nettare
