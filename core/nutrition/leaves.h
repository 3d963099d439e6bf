#pragma once

#include <string>
#include <vector>

#include "core/nutrition/way_to_grams.h"

namespace nettare {

/// Grams of one food that the batch's eaters get: a line less its residue, or, negative, fat that
/// dripped off. Kept recipes are flattened to such leaves.
struct Leaf {
    std::size_t food = 0;
    LinearForm grams;
    std::string path;  ///< line ids from the outermost recipe in: "sauce/oil"
};

/// A residue whose make-up is unknown: it may be any line of its recipe, lean or rich.
struct UnknownResidue {
    LinearForm grams;
    std::vector<std::size_t> foods;  ///< that it may consist of
    std::uint32_t number = 0;
};

/// What of a recipe is eaten.
struct Eaten {
    std::vector<Leaf> leaves;  ///< in canonical order: food identity, grams, path
    std::vector<UnknownResidue> unknown;
    LinearForm used;                   ///< sum of all leaves and residues' removal, grams
    std::optional<LinearForm> cooked;  ///< cooked weight less what in it is not eaten
};

/// How every line of the main recipe was found; empty ways for lines that are kept recipes.
struct LineReport {
    LineGrams ways;     ///< empty for kept recipes
    LinearForm asUsed;  ///< edible grams into the bowl
    LinearForm eaten;   ///< less residue
};

/// Finds the grams of all lines, takes residues away and flattens kept recipes; `report` gets one
/// entry per line of the recipe, in its order. Fails with the errors of waysToGrams,
/// LineWeighsNothing, ResidueTooLarge (nothing is left to eat), NotEatenTooLarge.
[[nodiscard]] Result<Eaten> eatenOf(const Dossier& dossier, std::size_t recipe,
                                    std::vector<LineReport>& report);

}  // namespace nettare
