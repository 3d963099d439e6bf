#pragma once

#include <string_view>

#include "core/food/table_food.h"
#include "db/build_table/processing_place.h"

namespace nettare {

/// What no public table tells of its foods, but a figure needs.
struct ImportedTraits {
    bool plant = false;
    AddedSugars addedSugars;
};

/// Told by name, group and place, on the safe side: a food is an unhydrogenated plant food only
/// where it is plain, of a group of plants, and its name speaks of no fat, frying or mixture; it
/// has no added sugars only where it is plain and of a group of single foods.
[[nodiscard]] ImportedTraits importedTraits(std::string_view name, std::string_view group,
                                            ProcessingPlace place);

}  // namespace nettare
