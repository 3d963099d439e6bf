#pragma once

#include <string>

namespace nettare {

/// True for a file that no result may take the place of: a database, such as a kitchen or a table
/// of foods; a file that is named as a kitchen; or one that SQLite or a window keeps beside one.
/// False where there is no such file.
[[nodiscard]] bool isDatabase(const std::string& path);

}  // namespace nettare
