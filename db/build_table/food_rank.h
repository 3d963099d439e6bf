#pragma once

#include <compare>
#include <string_view>

#include "db/build_table/processing_place.h"

namespace nettare {

/// Where a food stands among all of a table before anybody searched: smaller is better, and equals
/// go by number. With it a table numbers its rows.
struct FoodRank {
    ProcessingPlace place = ProcessingPlace::Plain;
    int qualifiers = 0;  ///< commas and brackets of its name; the plain thing has few

    friend auto operator<=>(const FoodRank&, const FoodRank&) = default;
};

[[nodiscard]] FoodRank foodRank(std::string_view name, std::string_view group);

}  // namespace nettare
