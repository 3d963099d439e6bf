#pragma once

#include "core/nutrition/figures.h"

namespace skewers {

using namespace nettare;

inline Count counted(std::int64_t numerator, std::int64_t denominator = 1) {
    return *Count::from(*Fraction::make(numerator, denominator));
}

/// Ten skewers, two a portion, and no lines: what the words of figures need of a recipe.
inline Recipe recipe() {
    Recipe recipe;
    recipe.title = "Skewers";
    recipe.pieces = counted(10);
    recipe.pieceWord = "skewer";
    recipe.piecesWord = "skewers";
    recipe.portionPieces = counted(2);
    return recipe;
}

/// A complete figure with standard uncertainty u and infinite degrees of freedom: +- 1.96 u.
inline Figure known(Component component, double value, double u = 0) {
    Figure figure;
    figure.component = component;
    figure.value = figure.atLeast = value;
    figure.atMost = value;
    figure.u = u;
    figure.freedom = std::numeric_limits<double>::infinity();
    return figure;
}

/// A figure with one missing part, in the food of index 0.
inline Figure open(Component component, double atLeast, std::optional<double> atMost,
                   double knownShare) {
    Figure figure = known(component, atLeast);
    figure.atMost = atMost;
    figure.knownShare = knownShare;
    figure.missingFoods = {0};
    return figure;
}

}  // namespace skewers
