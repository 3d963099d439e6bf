#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/table_food.h"
#include "db/food_table.h"

namespace SQLite {
class Database;
}

namespace nettare {

// Rows of a table file as core types. Every function here throws SQLite::Exception.

/// What the file says of itself.
struct TableIdentity {
    std::string table;
    std::string release;
    std::string citation;
    MeasureSpreads measureSpreads;
};

[[nodiscard]] TableIdentity readIdentity(SQLite::Database& database);
[[nodiscard]] std::size_t countFoods(SQLite::Database& database);
[[nodiscard]] std::vector<std::string> readNumbers(SQLite::Database& database);
[[nodiscard]] PerComponent<std::optional<double>> readUsualSpread(SQLite::Database& database);

[[nodiscard]] std::optional<TableFood> readFood(SQLite::Database& database,
                                                const TableIdentity& identity,
                                                std::string_view number);

/// All values of a row, in the order of its components.
[[nodiscard]] std::vector<FoodValue> readFoodValues(SQLite::Database& database,
                                                    std::string_view number);

/// By name of the group.
[[nodiscard]] std::vector<GroupDensity> readGroupDensities(SQLite::Database& database);

/// As a list of hits shows it; nothing where there is no such number.
[[nodiscard]] std::optional<FoodHit> readHit(SQLite::Database& database,
                                             const TableIdentity& identity,
                                             std::string_view number);

}  // namespace nettare
