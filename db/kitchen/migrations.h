#pragma once

#include <functional>
#include <span>
#include <string>

#include "core/support/result.h"
#include "db/sql_step.h"

namespace SQLite {
class Database;
}

namespace nettare {

/// The format of an open file: how many steps made it. Throws SQLite::Exception.
[[nodiscard]] int formatOf(SQLite::Database& database);

/// Runs the steps that the file has not seen and then `finish`, all in one transaction; each step
/// runs whole. Nothing is changed where it fails: MigrationFailed ("found", "known", "step",
/// "reason"), or what a full disk or a busy file gives.
[[nodiscard]] Result<void> migrate(SQLite::Database& database, const std::string& path,
                                   std::span<const SqlStep> steps,
                                   const std::function<void()>& finish);

/// The same after a safety copy "x.nettare.before-3" (the format to come), which goes again where
/// the migration fails. Nothing is done where the file has seen all steps.
[[nodiscard]] Result<void> bringUpToDate(SQLite::Database& database, const std::string& path,
                                         std::span<const SqlStep> steps,
                                         const std::function<void()>& finish);

}  // namespace nettare
