#include "core/nutrition/pieces.h"

namespace nettare {

LinearForm piecesOf(const Dossier& dossier, std::size_t index) {
    const Recipe& recipe = dossier.recipes[index];
    LinearForm pieces{recipe.pieces.value()};
    if (const auto& range = recipe.piecesRange)
        pieces.depend(rectangle({SourceKind::PiecesRange, static_cast<std::uint32_t>(index), 0},
                                rectangular(range->high().value() - range->low().value())),
                      1);
    return pieces;
}

}  // namespace nettare
