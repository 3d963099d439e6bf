#pragma once

#include "core/nutrition/leaves.h"

namespace nettare {

/// Takes the residues of a recipe away from its lines, one after the other: one line, or a mixture
/// of which every line loses the same share of what was in. A line is in with all that the residues
/// before have left of it, or with the share that the document names of it as used. Drip becomes a
/// negative leaf of its own food, an unknown make-up an entry of its own; cooking water and what
/// carries nothing are only weights. `kept` is what the kept recipes of the lines hold, by line.
[[nodiscard]] std::optional<Error> takeResidues(const Dossier& dossier, std::size_t recipe,
                                                Meaning meaning, const std::vector<Eaten>& kept,
                                                std::vector<LineReport>& lines, Eaten& eaten,
                                                std::vector<ResidueTaking>* takings = nullptr);

/// Grams that a residue weighs: of this cook, or for the recipe mean those of all test cooks.
[[nodiscard]] LinearForm leftOver(const Dossier& dossier, const Residue& residue,
                                  std::uint32_t number, Meaning meaning);

/// Indices of lines in canonical order: food identity, grams as used, id. Sums run in this order,
/// so that the order of lines in a document changes no digit.
[[nodiscard]] std::vector<std::size_t> canonicalOrder(const Dossier& dossier, const Recipe& recipe,
                                                      const std::vector<LineReport>& lines,
                                                      std::vector<std::size_t> which);

/// ResidueTooLarge of a recipe whose residues take away all that went in, at its last residue.
[[nodiscard]] Error nothingEaten(const Recipe& recipe, const std::vector<LineReport>& lines,
                                 const Eaten& eaten);

}  // namespace nettare
