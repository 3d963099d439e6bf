#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/food/table_food.h"
#include "db/build_table/processing_place.h"

namespace nettare {

/// One line of a search result.
struct FoodHit {
    TableRow row;
    std::string name;
    std::string group;
    std::optional<double> energyKcalPer100g;
    int knownComponents = 0;  ///< components with a value, of kComponentCount
    ProcessingPlace place = ProcessingPlace::Plain;
};

/// A word that no food has, and the words of foods that it was taken for: one slip apart.
struct ForgivenSlip {
    std::string typed;
    std::vector<std::string> taken;  ///< best first
};

/// What a search finds.
struct FoodSearch {
    std::vector<FoodHit> hits;  ///< best first
    std::vector<ForgivenSlip> slips;
};

/// How often a cook used rows, by TableRow::text(): among rows as good as each other, those used
/// more often come first.
using UsedRows = std::map<std::string, int, std::less<>>;

}  // namespace nettare
