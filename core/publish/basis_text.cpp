#include "core/publish/basis_text.h"

namespace nettare {

namespace {

/// "10 skewers", "1/2 skewer".
std::string counted(Count count, const Recipe& recipe) {
    return writeFraction(count.exact()) + " " + pieceWordFor(count, recipe);
}

/// "10 skewers"; of a range "4-6 skewers, counted as 5".
std::string batchText(const Recipe& recipe) {
    if (!recipe.piecesRange) return counted(recipe.pieces, recipe);
    return recipe.piecesRange->text() + " " + recipe.piecesWord + ", counted as " +
           writeFraction(recipe.pieces.exact());
}

}  // namespace

std::string pieceWordFor(Count count, const Recipe& recipe) {
    return count.isAtMostOne() ? recipe.pieceWord : recipe.piecesWord;
}

std::string portionText(const Recipe& recipe) {
    if (recipe.portionPieces) return counted(*recipe.portionPieces, recipe);
    // The reader of the document saw to it that one of the two is there.
    return recipe.portionGrams->text() + " g";
}

std::string basisText(const Figures& figures, const Recipe& recipe) {
    switch (figures.basis) {
        case Basis::Piece:
            return "per " + recipe.pieceWord;
        case Basis::Portion:
            return "per portion of " + portionText(recipe);
        case Basis::Hundred:
            return figures.beforeCooking ? "per 100 g before cooking" : "per 100 g";
        case Basis::Batch:
            return "per batch of " + batchText(recipe);
    }
    return {};
}

}  // namespace nettare
