#pragma once

#include <cstdint>
#include <limits>
#include <string_view>

#include "db/build_table/processing_place.h"

namespace nettare {

/// What the rank of a row goes by.
struct RankedRow {
    std::string_view name;
    std::string_view group;
    ProcessingPlace place{};
    /// Its place among the foods that a cook means when only the kind is named; none by default.
    int everyday = std::numeric_limits<int>::max();
};

/// Best is lowest: plain before processed before composed before branded, then everyday foods in
/// their order, then the fewer commas and brackets the name has: the plain thing has few. Rows of
/// one rank go by their number.
[[nodiscard]] std::int64_t rowRank(const RankedRow& row);

}  // namespace nettare
