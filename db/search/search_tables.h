#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>

#include "db/food_table.h"

namespace nettare {

/// Numbers of rows, with the place of the first table that holds them.
using FirstHolders = std::unordered_map<std::string, std::size_t>;

/// Tables that are searched as one.
struct TablesInOrder {
    std::span<const FoodTable> tables;
    /// For each table, its rows that an earlier one holds, too; fewer entries: none.
    std::span<const FirstHolders> heldEarlier;
    /// The first so many have rows that were put in order by hand, as those of the starter: there
    /// that order counts, and what a name says beyond the words does not.
    std::size_t orderedByHand = 1;
};

/// At most `most` foods of all tables for the words, best first; a row that several tables hold
/// shows as the first of them has it. Where a word finds nothing, or all of them together, one slip
/// in it is forgiven. Fails: TableUnreadable.
[[nodiscard]] Result<FoodSearch> searchTables(const TablesInOrder& tables, std::string_view words,
                                              std::size_t most, const UsedRows& used);

}  // namespace nettare
