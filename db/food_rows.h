#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/table_food.h"
#include "db/food_table.h"
#include "db/match_quality.h"

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

/// A food that holds the words searched for, on its way to being ranked.
struct Candidate {
    FoodHit hit;
    std::vector<std::string> otherNames;
    MatchQuality quality = MatchQuality::Start;
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

/// The first `most` foods of the full-text index that match, in row order.
[[nodiscard]] std::vector<Candidate> readCandidates(SQLite::Database& database,
                                                    const TableIdentity& identity,
                                                    const std::string& indexQuery, int most);

}  // namespace nettare
