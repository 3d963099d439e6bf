#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/table_food.h"

namespace nettare {

/// The table that own foods are rows of: release is the version, "1", "2" ..., number the UUID.
inline constexpr std::string_view kOwnTable = "own";

[[nodiscard]] inline bool isOwn(const TableRow& row) {
    return row.table == kOwnTable;
}

/// Where the values of an own food come from.
struct OwnFoodOrigin {
    std::string source;  ///< as the cook says it: "miller's analysis, lot 12"
    std::string date;    ///< of the source: "2026-05-16"
    std::string note;    ///< may be empty
    /// The row that it was copied from, with its name then.
    std::optional<TableRow> copiedFrom;
    std::string copiedName;
    /// What is no longer as in that row, in the order of components.
    std::vector<Component> changed;
};

/// One version of a food that a cook typed.
struct OwnFood {
    TableFood food;  ///< its row says which food and which version
    OwnFoodOrigin origin;
};

}  // namespace nettare
