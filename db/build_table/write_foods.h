#pragma once

#include <map>
#include <string>

#include "core/food/table_food.h"

namespace SQLite {
class Database;
}

namespace nettare {

/// The number of each food group's row.
using GroupNumbers = std::map<std::string, int>;

/// Writes one food with its values, measures, names and search words as row `rowOrder`. Its group
/// and all components must be written already. Throws SQLite::Exception.
void writeFood(SQLite::Database& database, const TableFood& food, int rowOrder,
               const GroupNumbers& groups);

}  // namespace nettare
