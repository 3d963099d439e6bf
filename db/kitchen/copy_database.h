#pragma once

#include <string>

#include "core/support/result.h"

namespace SQLite {
class Database;
}

namespace nettare {

/// Fails: KitchenNameTaken, KitchenExists, KitchenNeighbour (what a kitchen of that name left).
[[nodiscard]] Result<void> checkNewName(const std::string& path);

/// Copies the whole content in place of another's. Throws SQLite::Exception.
void copyContent(SQLite::Database& source, SQLite::Database& copy);

/// Copies the whole content into a new file: written beside its name, synced, then renamed, so that
/// it is there whole or not at all. Throws SQLite::Exception. Fails: KitchenExists,
/// KitchenNameTaken, KitchenNotWritable, KitchenDiskFull, KitchenDiskFault (with the new file's
/// path).
[[nodiscard]] Result<void> copyDatabase(SQLite::Database& source, const std::string& path);

/// Renames without ever replacing a file, and syncs the folder. Fails like copyDatabase().
[[nodiscard]] Result<void> putInPlace(const std::string& partial, const std::string& path);

/// A name for a file that is not whole yet, beside its own.
[[nodiscard]] std::string partialName(const std::string& path);

/// Removes a file and what SQLite may have left beside it.
void removeDatabase(const std::string& path);

}  // namespace nettare
