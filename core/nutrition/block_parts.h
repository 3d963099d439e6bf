#pragma once

#include "core/nutrition/block.h"

namespace nettare {

// What batchBlock() takes away after the lines are in it, and what can be wrong with it.

/// Marks the components of which the drips hold more than the lines do: Block::dripMissing.
void markDripMissing(Block& block, const Eaten& eaten,
                     const std::vector<Composition>& compositions);

/// Takes away a residue that may be anything between the leanest and the richest of its foods: the
/// middle of that range, with the range as a rectangle, never more than there is. Where a food's
/// value is missing, the bounds widen by how far that food may reach beyond the others.
void subtractUnknown(Block& block, const UnknownResidue& residue,
                     const std::vector<Composition>& compositions);

/// How much of one component an unknown residue may hold, beside what there is of it.
struct UnknownRange {
    double low = 0, high = 0;  ///< by the foods that are known; their middle is taken
    double beyondLow = 0;      ///< how far foods without data may hold less than `low`
    std::optional<double> beyondHigh = 0.0;  ///< or more than `high`; nothing where no bound is
};
[[nodiscard]] UnknownRange rangeOf(const UnknownResidue& residue, std::size_t component,
                                   double there, const std::vector<Composition>& compositions);

/// DripTooLarge where more water, protein, fat, carbohydrate or alcohol ran off than the lines may
/// hold; ResidueTooLarge where more water was poured off than is there.
[[nodiscard]] std::optional<Error> overdrawn(const Dossier& dossier, const Block& batch,
                                             const Eaten& eaten,
                                             const std::vector<Composition>& compositions);

}  // namespace nettare
