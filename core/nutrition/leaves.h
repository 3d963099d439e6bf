#pragma once

#include <string>
#include <vector>

#include "core/nutrition/line_counting.h"

namespace nettare {

/// Grams of one food that the batch's eaters get: a line less its residue, or, negative, fat that
/// dripped off. Kept recipes are flattened to such leaves.
struct Leaf {
    std::size_t food = 0;
    LinearForm grams;
    std::string path;                     ///< line ids from the outermost recipe in: "sauce/oil"
    std::optional<std::uint32_t> drip{};  ///< number of the residue that it is
};

/// A residue whose make-up is unknown: it may be any line of its recipe, lean or rich.
struct UnknownResidue {
    LinearForm grams;
    std::vector<std::size_t> foods;  ///< that it may consist of
    std::uint32_t number = 0;
};

/// A line that counts in part or not at all, of this recipe or of a kept one that it uses.
struct OpenLine {
    std::uint32_t number = 0;  ///< of the line among all recipes
    LineCounting counting = LineCounting::Counted;

    friend bool operator==(const OpenLine&, const OpenLine&) = default;
};

/// What of a recipe is eaten.
struct Eaten {
    std::vector<Leaf> leaves;  ///< in canonical order: food identity, grams, path
    std::vector<UnknownResidue> unknown;
    LinearForm pouredOff;       ///< cooking water, grams
    LinearForm carriesNothing;  ///< bones and the like that went in with the lines, grams
    LinearForm
        keptChange;   ///< water that kept recipes gained, or lost, in their own cooking, grams
    LinearForm used;  ///< grams of all that is eaten, before this recipe's own cooking
    std::optional<LinearForm> cooked;  ///< cooked weight less what in it is not eaten
    std::vector<OpenLine> open;        ///< those of this recipe first, each once
};

/// How every line of the main recipe was found; empty ways for lines that are kept recipes, and for
/// lines without grams.
struct LineReport {
    LineGrams ways;
    LinearForm asUsed;  ///< edible grams into the bowl; of an optional line what counts of them
    LinearForm eaten;   ///< less residue
    LinearForm added;   ///< of asUsed, what a tried amount adds to its own; below zero for less
    LineCounting counting = LineCounting::Counted;
};

/// What one residue took of one line, for whoever explains it.
struct ResidueTaking {
    std::size_t residue = 0, line = 0;  ///< of the recipe
    double inMixture = 0;               ///< grams of the line that were in
    double mixture = 0;                 ///< grams of all lines that were in
    LinearForm taken;                   ///< grams
};

/// Finds the grams of all lines, takes residues away and flattens kept recipes; `report` gets one
/// entry per line of the recipe, in its order. Fails with the errors of waysToGrams,
/// LineWeighsNothing, NothingCounted, ResidueTooLarge (also where nothing is left to eat),
/// NotEatenTooLarge. A line tried with nothing is not there. A cooked weight grows by what tried
/// amounts add: cooking takes away as many grams as it did. For the recipe mean, what several test
/// cooks weighed counts as their mean. `takings`, where it is asked for, gets what the residues of
/// this recipe took, in their order and before optional lines are halved.
[[nodiscard]] Result<Eaten> eatenOf(const Dossier& dossier, std::size_t recipe,
                                    std::vector<LineReport>& report,
                                    Meaning meaning = Meaning::ThisBatch,
                                    std::vector<ResidueTaking>* takings = nullptr);

}  // namespace nettare
