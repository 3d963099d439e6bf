#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "kitchen.h"

namespace nettare {

/// Draws recipes of two to nine lines: every way to grams, series, a label, a kept recipe, lines to
/// taste and optional ones, ranges, residues of every kind, with and without a cooked weight, and
/// the rules of counting. Uses the raw output of mt19937, which is the same everywhere. Some of
/// what it draws has no figures: a residue may be more than there is.
class RandomRecipes {
public:
    /// AllWays draws what cooks write more rarely as well: fillings, packs, an amount said twice,
    /// yields and trimming by series, stated densities, manners of speech, a scale in ounces, kept
    /// recipes in kept recipes, several test cooks.
    enum class Draw { UsualWays, AllWays };

    explicit RandomRecipes(std::mt19937::result_type seed, Draw draw = Draw::UsualWays)
        : random_{seed}, draw_{draw} {}

    [[nodiscard]] kitchen::Kitchen next();

private:
    std::size_t below(std::size_t limit) { return random_() % limit; }
    bool oneIn(std::size_t many) { return below(many) == 0; }
    /// Eighths from 1/8 to 4, as cooks write them.
    std::string anyAmount();
    /// A reading of a new id.
    std::string weigh(kitchen::Kitchen& kitchen, std::size_t least, std::size_t most,
                      const std::string& state = "edible portion");
    std::string measured(kitchen::Kitchen& kitchen);
    std::string rarelyMeasured(kitchen::Kitchen& kitchen);
    std::string yielded();
    std::string rarelyKept();
    void addRareThings(kitchen::Kitchen& kitchen);
    std::string anyLine(kitchen::Kitchen& kitchen);
    std::string anyResidue(kitchen::Kitchen& kitchen);
    std::string anyMixture();

    std::mt19937 random_;
    Draw draw_;
    std::size_t readings_ = 0;
    std::size_t lines_ = 0;
};

/// The kitchen with its lines in another order.
[[nodiscard]] kitchen::Kitchen withLinesMoved(const kitchen::Kitchen& kitchen, std::uint32_t seed);

/// The kitchen with that line in two parts that share its sources: a quarter and the rest. `rest`
/// is of the whole, in eighths; 6 gives two parts that are the line.
[[nodiscard]] kitchen::Kitchen withLineSplit(const kitchen::Kitchen& kitchen, std::size_t line,
                                             int rest = 6);

/// The kitchen with that line's unit renamed to the smaller one: so many of it are one of the
/// other.
[[nodiscard]] kitchen::Kitchen withUnitRenamed(const kitchen::Kitchen& kitchen, std::size_t line,
                                               const std::string& unit, int many);

}  // namespace nettare
