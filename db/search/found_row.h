#pragma once

#include <cstdint>
#include <string>
#include <tuple>

#include "db/build_table/processing_place.h"
#include "db/match_quality.h"

namespace nettare {

/// A food that one table found, and what it is ranked by.
struct FoundRow {
    Match match;
    ProcessingPlace place = ProcessingPlace::Plain;
    std::int64_t rowOrder = 0;  ///< in that table
    std::string number;

    /// Smaller is better: what was asked for, the likelier slip, the plainer food.
    [[nodiscard]] auto kind() const { return std::tuple{match.quality, match.slip, place}; }
};

}  // namespace nettare
