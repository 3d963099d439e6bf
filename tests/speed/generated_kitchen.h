#pragma once

#include <cstddef>

#include "core/recipe/dossier.h"

namespace nettare {

/// A dossier of that many lines over 40 foods, every number invented. Lines take their grams in
/// turn from a bowl filled in steps, a reading of its own, a series, a label, a table measure, a
/// density and the weight as written; every fifth line is part of a mixture that leaves a residue;
/// the dish was weighed. Foods carry all components, each with its standard error.
[[nodiscard]] Dossier generatedDossier(std::size_t lines);

/// 60 such lines over two levels of kept recipes: ten are the dish's own, and of the two kept
/// recipes that it uses each has ten and one kept recipe of fifteen. Where they were
/// not weighed after cooking, a share of one is uncertain by every line in it.
[[nodiscard]] Dossier nestedDossier(bool weighed);

}  // namespace nettare
