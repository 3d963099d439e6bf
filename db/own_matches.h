#pragma once

#include <string>
#include <vector>

#include "db/food_search.h"
#include "db/kitchen/own_food_record.h"

namespace nettare {

/// As a list shows a food that is at hand whole.
[[nodiscard]] FoodHit hitOf(const TableFood& food);

/// Own foods in use that hold all the words, each as the start of a word of theirs, by how well
/// they match.
struct OwnMatches {
    std::vector<FoodHit> well;     ///< the words stand there whole
    std::vector<FoodHit> started;  ///< some word only begins one of theirs
};

/// A food that others were merged into is found by their names as well.
[[nodiscard]] OwnMatches ownMatches(const std::vector<OwnFoodRecord>& foods,
                                    const std::string& words);

}  // namespace nettare
