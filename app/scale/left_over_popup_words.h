#pragma once

#include <QString>

#include <vector>

#include "core/recipe/recipe_document.h"

namespace nettare {

/// One choice of what is left over.
struct LeftOverKindWords {
    ResidueKind kind;
    const char* name;  ///< of its button, for tests
    QString text;
};

/// All, in the order in which they are offered.
[[nodiscard]] std::vector<LeftOverKindWords> leftOverKinds();

}  // namespace nettare
