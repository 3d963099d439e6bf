#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "db/food_table.h"
#include "db/import/import_parts.h"

namespace nettare {

/// The food of that number in the table file that an import wrote.
inline TableFood importedFood(const ImportReport& report, const std::string& number) {
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    auto food = table->find(number);
    REQUIRE(food);
    REQUIRE(*food);
    return std::move(**food);
}

/// Whether the table file that an import wrote has the food.
inline bool hasFood(const ImportReport& report, const std::string& number) {
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    const auto food = table->find(number);
    REQUIRE(food);
    return food->has_value();
}

/// All values of a food in the table file that an import wrote.
inline std::vector<FoodValue> importedValues(const ImportReport& report,
                                             const std::string& number) {
    const auto table = FoodTable::open(report.path);
    REQUIRE(table);
    auto values = table->values(number);
    REQUIRE(values);
    return std::move(*values);
}

/// The codes of what an import left out, with their lines: "CellNegative" is told by its number.
inline std::vector<std::pair<ErrorCode, int>> rejections(const ImportReport& report) {
    std::vector<std::pair<ErrorCode, int>> all;
    for (const RejectedRow& row : report.rejectedRows)
        all.emplace_back(row.reason.code, row.reason.line);
    return all;
}

}  // namespace nettare
