#pragma once

#include <string>

namespace SQLite {
class Database;
}

namespace nettare {

/// True for a file that is there; false for a folder, and where nothing can be seen.
[[nodiscard]] bool isFile(const std::string& path);

/// Opens a database file that nobody writes (immutable): no lock is taken and no side file made.
/// Throws SQLite::Exception.
[[nodiscard]] SQLite::Database openReadOnly(const std::string& path);

}  // namespace nettare
