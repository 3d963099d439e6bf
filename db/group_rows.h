#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/food_groups.h"
#include "db/food_rows.h"

namespace nettare {

// Rows of a table file for browsing. Every function here throws SQLite::Exception.

/// Groups that have foods, by name.
[[nodiscard]] std::vector<FoodGroup> readGroups(SQLite::Database& database,
                                                const TableIdentity& identity);

[[nodiscard]] GroupPage readGroupPage(SQLite::Database& database, const TableIdentity& identity,
                                      std::string_view group, std::int64_t next, int most);

}  // namespace nettare
