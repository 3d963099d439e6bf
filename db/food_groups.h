#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "db/food_search.h"

namespace nettare {

/// A group of foods of one table, for browsing.
struct FoodGroup {
    std::string table, release;
    std::string name;
    std::size_t foods = 0;
};

/// Some foods of a group, best first, and where the next ones begin.
struct GroupPage {
    std::vector<FoodHit> hits;
    std::int64_t next = 0;  ///< hand it over for the page that follows
    bool last = false;      ///< nothing follows
};

}  // namespace nettare
