#include <algorithm>
#include <limits>

#include "core/nutrition/block_parts.h"

namespace nettare {

namespace {

/// What one gram of a residue may hold of a component.
struct Reach {
    std::optional<double> lean, rich;  ///< of the foods that are known; nothing where none is
    double low = std::numeric_limits<double>::infinity();  ///< of all foods
    std::optional<double> high = 0.0;                      ///< nothing where one has no bound
};

Reach reachOf(const UnknownResidue& residue, std::size_t k,
              const std::vector<Composition>& compositions) {
    Reach reach;
    for (const std::size_t food : residue.foods) {
        const ComponentAmount& amount = compositions[food].amounts[k];
        if (amount.origin != Origin::Missing) {
            reach.lean = std::min(reach.lean.value_or(amount.perGram), amount.perGram);
            reach.rich = std::max(reach.rich.value_or(amount.perGram), amount.perGram);
        }
        const bool missing = amount.origin == Origin::Missing;
        reach.low = std::min(reach.low, missing ? amount.low : amount.perGram);
        if (missing && !amount.high) reach.high.reset();
        if (reach.high) reach.high = std::max(*reach.high, missing ? *amount.high : amount.perGram);
    }
    if (residue.foods.empty()) reach.low = 0;
    return reach;
}

}  // namespace

UnknownRange rangeOf(const UnknownResidue& residue, std::size_t k, double there,
                     const std::vector<Composition>& compositions) {
    const double grams = residue.grams.value();
    const Reach reach = reachOf(residue, k, compositions);
    UnknownRange range;
    range.low = std::min(grams * reach.lean.value_or(0), std::max(0.0, there));
    range.high = std::min(grams * reach.rich.value_or(0), std::max(0.0, there));
    range.beyondLow = std::max(0.0, range.low - grams * reach.low);
    range.beyondHigh.reset();
    if (reach.high) range.beyondHigh = std::max(0.0, grams * *reach.high - range.high);
    return range;
}

void subtractUnknown(Block& block, const UnknownResidue& residue,
                     const std::vector<Composition>& compositions) {
    const double grams = residue.grams.value();
    PerComponent<double> middle{};  // per gram
    double* makeup =
        block.row(rectangle({SourceKind::ResidueMakeup, 0, residue.number}, rectangular(1)));
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const UnknownRange range = rangeOf(residue, k, block.known[k], compositions);
        if (grams > 0) middle[k] = (range.low + range.high) / 2 / grams;
        block.known[k] -= (range.low + range.high) / 2;
        makeup[k] += range.high - range.low;
        if (block.missingFoods[k].empty()) continue;
        if (range.beyondHigh)
            block.missingLow[k] -= *range.beyondHigh;
        else
            block.missingLow[k] = -std::numeric_limits<double>::infinity();
        block.missingHigh[k] += range.beyondLow;
    }
    for (const LinearForm::Term& term : residue.grams.terms()) {
        double* row = block.row(term.source);
        for (std::size_t k = 0; k < kComponentCount; ++k) row[k] -= term.sensitivity * middle[k];
    }
}

}  // namespace nettare
