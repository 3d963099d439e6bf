#pragma once

#include "core/nutrition/figures.h"

namespace nettare {

/// One side of a comparison: a document, the dossier made from it, and what was cooked of that. All
/// three outlive the comparison.
struct ComparedState {
    const RecipeDocument& document;
    const Dossier& dossier;
    const Cooked& cooked;
};

}  // namespace nettare
