#include "db/build_table/food_rank.h"

#include <algorithm>

namespace nettare {

FoodRank foodRank(std::string_view name, std::string_view group) {
    const auto qualifiers =
        std::ranges::count_if(name, [](char c) { return c == ',' || c == '('; });
    return {.place = processingPlace(name, group), .qualifiers = static_cast<int>(qualifiers)};
}

}  // namespace nettare
