#pragma once

#include "core/quantity/interval.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// How much a spoon or cup holds that is filled so, beside a level one: anything between two ends.
/// Common practice; no source measured it.
[[nodiscard]] constexpr Interval fillFactor(Fill fill) {
    switch (fill) {
        case Fill::Heaping:
            return {1.25, 2.0};
        case Fill::Rounded:
            return {1.1, 1.6};
        case Fill::Generous:
            return {1.0, 1.15};
        case Fill::Level:
            return {1, 1};
        case Fill::Scant:
            return {0.85, 1.0};
    }
    return {1, 1};
}

/// Whether a unit is a spoon or cup, which can be heaped; a fluid ounce cannot.
[[nodiscard]] constexpr bool isSpoonOrCup(const Unit& unit) {
    return unit.symbol == "tsp" || unit.symbol == "tbsp" || unit.symbol == "dessertspoon" ||
           unit.symbol == "cup";
}

}  // namespace nettare
