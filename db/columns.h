#pragma once

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <optional>
#include <string>

namespace nettare {

// One column of the row a statement stands at. NULL is missing: nothing, an empty text, no count.

[[nodiscard]] inline std::optional<double> numberAt(SQLite::Statement& row, int column) {
    const SQLite::Column value = row.getColumn(column);
    if (value.isNull()) return std::nullopt;
    return value.getDouble();
}

[[nodiscard]] inline std::string textAt(SQLite::Statement& row, int column) {
    return row.getColumn(column).getString();
}

/// 0 where the column is NULL, as core types have it for "not published".
[[nodiscard]] inline int countAt(SQLite::Statement& row, int column) {
    return row.getColumn(column).getInt();
}

}  // namespace nettare
