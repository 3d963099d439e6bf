#pragma once

#include <string>
#include <vector>

#include "core/quantity/kitchen_fraction.h"
#include "core/quantity/unit.h"

namespace nettare {

/// One tool of a measured volume: 1/4 cup, or 5 tbsp.
struct SpoonedPart {
    Fraction amount;
    const Unit* unit;  ///< cup, tbsp or tsp of the system
};

/// A volume as cups and spoons.
struct SpoonedVolume {
    std::vector<SpoonedPart> parts;  ///< largest tool first; never empty
    double relativeError = 0;        ///< measured / asked - 1; 0 below 1e-12 in size

    [[nodiscard]] Volume volume() const;
    [[nodiscard]] std::string text() const;      ///< "1/4 cup plus 1 tbsp"
    [[nodiscard]] std::string signText() const;  ///< "1½ cups"
};

/// The fewest tools whose error is at most `tolerance` (relative); among as many the smallest
/// error, then the largest tool: 0.3125 cup are 5 tbsp. Where three tools miss the tolerance, the
/// nearest they reach, so look at the error. Spoons up to half a cup, teaspoons up to a tablespoon.
/// Nothing for a volume that is not positive, not finite or above 1e9 cups.
[[nodiscard]] std::optional<SpoonedVolume> writeMeasure(Volume volume, MeasureSystem system,
                                                        double tolerance);

}  // namespace nettare
