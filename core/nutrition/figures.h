#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/nutrition/budget.h"

namespace nettare {

/// One component of one basis, unrounded; what it is of is the meaning of Figures.
struct Figure {
    Component component{};
    double value = 0;                       ///< sum of the known parts
    double u = 0;                           ///< combined standard uncertainty of the known parts
    double freedom = 0;                     ///< effective degrees of freedom; infinity possible
    double atLeast = 0;                     ///< bounds; both equal `value` where nothing is missing
    std::optional<double> atMost;           ///< nothing where a missing part has no bound
    double knownShare = 1;                  ///< of the eaten weight
    std::vector<std::size_t> missingFoods;  ///< indices into Dossier::foods

    [[nodiscard]] bool complete() const { return missingFoods.empty(); }
};

/// A 95 % interval: value +- t(0.975; freedom) u, the bounds of missing parts added; its low end is
/// never below zero. High is nothing where a missing part has no bound.
struct FigureInterval {
    double low = 0;
    std::optional<double> high;
    double halfWidth = 0;
};
[[nodiscard]] FigureInterval intervalOf(const Figure& figure);

/// Everything computed from a dossier once; figures of any basis follow from it.
struct Cooked {
    std::vector<LineReport> lines;  ///< of the main recipe, in its order
    Eaten eaten;
    std::vector<Composition> compositions;
    Block batch;
    Meaning meaning = Meaning::ThisBatch;
};
[[nodiscard]] Result<Cooked> cook(const Dossier& dossier, Meaning meaning = Meaning::ThisBatch);

/// The same with the compositions of the dossier's foods at hand, as compositionsOf() gives them.
/// They follow from foods and assumptions alone: whoever edits lines, readings or residues may move
/// them over from the Cooked before.
[[nodiscard]] Result<Cooked> cook(const Dossier& dossier, std::vector<Composition> compositions,
                                  Meaning meaning = Meaning::ThisBatch);

/// Figures of one basis with the block they came from, for the path and the budget; their meaning
/// is that of the block. A portion of several pieces of any make has a share that varies by the
/// square root of their number less.
struct Figures {
    Basis basis = Basis::Piece;
    bool beforeCooking = false;  ///< per 100 g of a dish whose cooked weight is not known
    Block block;
    PerComponent<Figure> figures;

    [[nodiscard]] const Figure& operator[](Component c) const { return figures[indexOf(c)]; }
};

/// Fails: CookedWeightMissing for a portion in grams of a dish that was not weighed.
[[nodiscard]] Result<Figures> figuresPer(Basis basis, const Dossier& dossier, const Cooked& cooked);

/// Grams of one portion of the cooked dish, nothing where it was not weighed and the portion is in
/// pieces.
[[nodiscard]] std::optional<double> portionGrams(const Dossier& dossier, const Cooked& cooked);

/// Portions in the batch; nothing for portions in grams of a dish that was not weighed.
[[nodiscard]] std::optional<double> portionsOf(const Dossier& dossier, const Cooked& cooked);

}  // namespace nettare
