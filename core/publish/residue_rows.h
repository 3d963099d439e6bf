#pragma once

#include <string>

#include "core/recipe/dossier.h"
#include "core/support/json.h"

namespace nettare {

/// One row for each residue of the main recipe that no line shows: drip, cooking water, what
/// carries nothing, and what is of unknown make-up.
[[nodiscard]] std::string residueRows(const Dossier& dossier);

/// All residues of the main recipe in the document's order: "kind", "called" where it has a name,
/// "grams" and "u".
[[nodiscard]] Json residuesJson(const Dossier& dossier);

}  // namespace nettare
