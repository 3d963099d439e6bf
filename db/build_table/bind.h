#pragma once

#include <SQLiteCpp/Statement.h>

#include <optional>
#include <string>
#include <string_view>

namespace nettare {

// Binds one value of a row to be written; what is missing becomes NULL.

inline void bindText(SQLite::Statement& row, int index, std::string_view text) {
    row.bind(index, std::string{text});
}
inline void bindNote(SQLite::Statement& row, int index, const std::string& text) {
    if (text.empty())
        row.bind(index);
    else
        row.bind(index, text);
}
inline void bindNumber(SQLite::Statement& row, int index, std::optional<double> value) {
    if (value)
        row.bind(index, *value);
    else
        row.bind(index);
}
/// 0 is "not published", as core types have it.
inline void bindCount(SQLite::Statement& row, int index, int count) {
    if (count > 0)
        row.bind(index, count);
    else
        row.bind(index);
}

}  // namespace nettare
