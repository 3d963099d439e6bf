#pragma once

#include "core/food/component.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// Which figure is asked where it comes from.
struct PathQuestion {
    Component component = Component::ENERC_KCAL;
    Basis basis = Basis::Portion;

    friend bool operator==(const PathQuestion&, const PathQuestion&) = default;
};

}  // namespace nettare
