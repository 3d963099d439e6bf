#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"

namespace nettare {

/// One line of a text table and its fields, as written.
struct TextRow {
    int line = 0;  ///< 1-based line in the file
    std::vector<std::string> fields;
};

/// A text table of resources/starter: lines of fields parted by "|", the first line names the
/// columns, "#" starts a line of comment.
struct TextTable {
    std::string file;  ///< its name within the folder
    std::vector<std::string> columns;
    std::vector<TextRow> rows;
};

/// Reads folder/file, which must have exactly those columns ("a|b|c"). Fails, with file and line:
/// FileNotReadable, TextNotClean (not UTF-8), WrongFormat (values "expected" and "found": columns,
/// or the number of fields of a line).
[[nodiscard]] Result<TextTable> readTextTable(const std::string& folder, const std::string& file,
                                              std::string_view columns);

}  // namespace nettare
