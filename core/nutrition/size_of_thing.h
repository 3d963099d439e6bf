#pragma once

#include "core/recipe/dossier.h"

namespace nettare {

/// The thing that a line without a unit is measured by: the walnut of "the size of a walnut", as a
/// vague volume. Null where its size says no such thing.
[[nodiscard]] const Unit* sizeOfThing(const Line& line);

}  // namespace nettare
