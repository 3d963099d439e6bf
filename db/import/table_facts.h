#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <string>
#include <vector>

#include "db/import/table_writer.h"
#include "db/import/value_rows.h"

namespace nettare {

/// The groups of a table that is being written, and which food is of which. A group's id is its
/// place + 1.
struct GroupedFoods {
    std::vector<std::string> groups;
    std::vector<std::uint32_t> groupOf;  ///< id, by food

    [[nodiscard]] const std::string& nameOf(std::uint32_t food) const {
        return groups[groupOf[food] - 1];
    }
};

// What a table says of itself and its groups, worked out when all rows are there. They throw
// SQLite::Exception.

void writeIdentity(SQLite::Database& database, const TableTarget& target,
                   const MeasureSpreads& spreads);
void writeAssumedSpreads(SQLite::Database& database, const GroupedFoods& foods,
                         const std::vector<ValueRows::RelativeSpread>& spreads);
/// The densities of groups; answers the spreads of measures, from the same reading of them.
[[nodiscard]] MeasureSpreads writeDensities(SQLite::Database& database, const GroupedFoods& foods);

}  // namespace nettare
