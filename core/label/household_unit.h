#pragma once

#include <string>
#include <string_view>

#include "core/quantity/unit.h"

namespace nettare {

/// The unit of a household measure as packages print it: "Tbsp", "tbsp.", "tablespoon(s)",
/// "Fl. Oz.", "cup (240 mL)". Case, points, plurals and what stands in brackets at the end do not
/// matter. Null for cans, slices and other pieces, and where the system has no such unit.
[[nodiscard]] const Unit* householdUnit(std::string_view printed, MeasureSystem system);

/// The piece word of such a measure in lower case, without what stands in brackets at its end:
/// "crackers" of "Crackers (30 g)".
[[nodiscard]] std::string householdPiece(std::string_view printed);

}  // namespace nettare
