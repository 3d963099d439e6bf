#pragma once

#include <span>
#include <string_view>

namespace nettare {

/// One numbered file of SQL text; it runs whole.
struct SqlStep {
    std::string_view name;  ///< "001_identity.sql"
    std::string_view text;
};

/// The steps of db/table_schema in their order: what a table file is made of.
[[nodiscard]] std::span<const SqlStep> tableSchema();

}  // namespace nettare
